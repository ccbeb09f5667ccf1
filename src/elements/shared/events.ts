// What a page may listen for: only what a person did, and nothing personal.

/** Details by event. Every event bubbles and leaves shadow roots. */
export interface LeadwortEvents {
  /** A character was answered, changed or skipped. `value` is in `unit`. */
  'leadwort-answer': {
    readonly character: string;
    readonly states?: readonly string[];
    readonly value?: number;
    readonly unit?: string;
    readonly skipped?: true;
  };
  /** The kind of verdict, or the plant that leads it, changed. `taxa` are ids, likeliest first. */
  'leadwort-verdict': { readonly kind: string; readonly taxa: readonly string[] };
  /** Guidance on a plant was opened. */
  'leadwort-guidance': { readonly taxon: string };
}

export function emit<Name extends keyof LeadwortEvents>(
  from: EventTarget,
  name: Name,
  detail: LeadwortEvents[Name],
): void {
  from.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}

declare global {
  interface HTMLElementEventMap {
    'leadwort-answer': CustomEvent<LeadwortEvents['leadwort-answer']>;
    'leadwort-verdict': CustomEvent<LeadwortEvents['leadwort-verdict']>;
    'leadwort-guidance': CustomEvent<LeadwortEvents['leadwort-guidance']>;
  }
}
