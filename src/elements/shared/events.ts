// The events a page may listen for: only what a person did, nothing that says who or where they are.
import type { KeyAnswer, VerdictKind } from '../../key/index.ts';

/** All bubble and cross shadow boundaries. */
export interface LeadwortEvents {
  /**
   * A question was answered or passed over. Fired by the question, and by the couplet with its number; a lead that
   * speaks of no character is no answer.
   */
  'leadwort-answer': KeyAnswer & { readonly couplet?: number };
  /** The first thing was said of a new plant. Fired by the element that holds the session. */
  'leadwort-started': { readonly key: string; readonly version: string };
  /**
   * The session took an answer, a changed one, or one passed over: of which character, and its place among the answers
   * from 1; not what was said. Fired by the element that holds the session.
   */
  'leadwort-answered': { readonly character: string; readonly number: number };
  /** The kind of verdict or the leading taxon changed. Fired by the element that holds the session. */
  'leadwort-verdict': { readonly kind: VerdictKind; readonly taxa: readonly string[] };
  /** What to do about a taxon was opened. Fired by the guidance. */
  'leadwort-guidance': { readonly taxon: string };
  /**
   * Plants were asked to be shown side by side, or the comparison was closed: then none. Fired by the verdict, the
   * standing, the name search and the comparison.
   */
  'leadwort-comparison': { readonly taxa: readonly string[] };
  /**
   * A way to reach somebody was opened: the id of a programme of the page's own file, `elsewhere` or `page`. Fired by
   * the help nearby; it says nothing of the place.
   */
  'leadwort-help': { readonly programme: string; readonly how: 'phone' | 'mail' | 'form' };
  /** A report arrived, or was taken out otherwise. Fired by the report; it says nothing of the plant, the place or the person. */
  'leadwort-report': { readonly how: 'sent' | 'mail' | 'print' | 'file' | 'map' | 'table' };
  /**
   * About answers kept on the device: there is no room, or nothing can be kept; some no longer fit the key and were set
   * aside (`left`); the same ones were changed in another tab (`elsewhere`); the page's address holds none that can be read
   * (`link`). `reason`, of an address alone: which characters were left, or what is wrong with which field. Fired by the
   * element that holds the session.
   */
  'leadwort-keep': {
    readonly trouble: 'full' | 'unavailable' | 'left' | 'elsewhere' | 'link';
    readonly reason?: string;
  };
  /** A round of practice or a final test ended; it says nothing of how it went. Fired by the practice room. */
  'leadwort-practice': { readonly course: string; readonly kind: 'round' | 'test'; readonly looks: number };
  /** A review was written into a report; `find` is the id of the report. Fired by the review. */
  'leadwort-review': { readonly find: string; readonly status: 'confirmed' | 'corrected' | 'photo-wanted' };
}

declare global {
  interface HTMLElementEventMap extends EventsOf<LeadwortEvents> {}
}
type EventsOf<Details> = { [Name in keyof Details]: CustomEvent<Details[Name]> };

/** Fires one of the events from `target`. */
export function fire<Name extends keyof LeadwortEvents>(
  target: EventTarget,
  name: Name,
  detail: LeadwortEvents[Name],
): void {
  target.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}
