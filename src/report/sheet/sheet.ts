// A key as a sheet to be printed: what stands on it, in order and in words, without saying how it is drawn.
import { type Couplet, type Key, type Lead, type Lookalike, languageFor, type Standing } from '../../key/index.ts';
import type { System } from '../../key/sizes.ts';
import { coursesOf } from './courses.ts';
import { type Statement, Wording } from './lead.ts';
import type { SheetWords } from './words.ts';

/**
 * The two layouts of floras. `bracketed`: couplets one after the other by number, their leads side by side; `indented`:
 * below each lead all that it leads to, one step further in.
 */
export const STYLES = ['bracketed', 'indented'] as const;
export type Style = (typeof STYLES)[number];

export interface SheetOptions {
  readonly style: Style;
  /** BCP 47 tag; the key's own first language serves whoever asks for one that it has not. */
  readonly language: string;
  readonly words: SheetWords;
  readonly units: System;
}

/** What a plant is called: empty `common` where it has no name but the scientific one. */
export interface Name {
  readonly taxon: string;
  readonly common: string;
  readonly scientific: string;
  readonly status: Standing;
}

export interface SheetLead extends Statement {
  /** Number of the couplet, and which of its leads this is, from 0. */
  readonly couplet: number;
  readonly lead: number;
  /** Steps from the left edge; 0 for all leads of the bracketed layout. */
  readonly depth: number;
  /** Bracketed: couplets from which one comes here. */
  readonly from: readonly number[];
  /** A couplet's number, names, or nothing where what follows stands right below. */
  readonly to: number | readonly Name[] | undefined;
}

export interface Alike {
  readonly names: readonly [Name, Name];
  readonly tells: readonly { readonly words: string; readonly how: 'always' | 'usually' }[];
}

export interface Sheet {
  readonly language: string;
  readonly words: SheetWords;
  readonly style: Style;
  readonly title: string;
  readonly region: string;
  readonly version: string;
  readonly reviewed: string;
  readonly cautions: {
    readonly general: readonly string[];
    /** Of the characters that the key asks for. */
    readonly looking: readonly string[];
    readonly plants: readonly { readonly names: readonly Name[]; readonly text: string }[];
  };
  readonly leads: readonly SheetLead[];
  readonly alike: readonly Alike[];
  /** Every plant of the key by name, with the couplets of which a lead ends there. */
  readonly plants: readonly { readonly name: Name; readonly couplets: readonly number[] }[];
}

/** The sheet of a key that has couplets; of one that has none, a sheet without leads. Pure. */
export function sheetIn(key: Key, { style, language: wanted, words, units }: SheetOptions): Sheet {
  const language = languageFor(key, wanted);
  const wording = new Wording(key, language, words, units);
  const names = new Map(key.taxa.map(({ id, name, common, status }) => [id, nameOf(id, name, common, status)]));
  const named = (ids: readonly string[]) => ids.flatMap((id) => names.get(id) ?? []);
  const { couplets, rows } = coursesOf(key.couplets, style);

  function nameOf(taxon: string, scientific: string, common: Names, status: Standing): Name {
    const shown = (common.get(language) ?? common.get(key.languages[0] ?? ''))?.[0] ?? '';
    return { taxon, common: shown === scientific ? '' : shown, scientific, status };
  }

  return {
    language,
    words,
    style,
    title: wording.say(key.title),
    region: wording.say(key.region),
    version: key.version,
    reviewed: key.reviewed,
    cautions: cautionsOf(key, couplets, wording, named),
    leads: rows.map(({ couplet, lead, depth, from, to }) => ({
      ...wording.statement(couplet, lead),
      couplet: couplet.number,
      lead,
      depth,
      from,
      to: typeof to === 'object' ? named(to) : to,
    })),
    alike: [...key.lookalikes]
      .sort((a, b) => weight(b, names) - weight(a, names))
      .map((pair) => ({
        names: pair.taxa.map((id) => names.get(id)) as unknown as [Name, Name],
        tells: pair.separate.map(({ words: text, how }) => ({ words: wording.say(text), how })),
      })),
    plants: [...names.values()]
      .map((name) => ({ name, couplets: endsAt(couplets, name.taxon) }))
      .sort((a, b) => shownAs(a.name).localeCompare(shownAs(b.name), language)),
  };
}

type Names = ReadonlyMap<string, readonly string[]>;
const shownAs = ({ common, scientific }: Name): string => common || scientific;

const endsAt = (couplets: readonly Couplet[], taxon: string): number[] =>
  couplets
    .filter(({ leads }) => leads.some(({ to }: Lead) => typeof to === 'object' && to.includes(taxon)))
    .map(({ number }) => number);

/** Pairs of which one is of concern and the other native come first: those are the mistakes that do harm. */
function weight({ taxa }: Lookalike, names: ReadonlyMap<string, Name>): number {
  const status = taxa.map((id) => names.get(id)?.status);
  if (!status.includes('native')) return 0;
  return status.includes('invasive') ? 2 : status.includes('introduced') ? 1 : 0;
}

function cautionsOf(
  key: Key,
  couplets: readonly Couplet[],
  wording: Wording,
  named: (ids: readonly string[]) => readonly Name[],
): Sheet['cautions'] {
  const asked = new Set(
    couplets.flatMap(({ leads }) =>
      leads.flatMap(({ character, also }) => [character, ...also.map((said) => said.character)]),
    ),
  );
  const looking = key.characters.flatMap(({ id, caution }) => (caution !== undefined && asked.has(id) ? caution : []));
  // What is said of several plants is said once, with all their names.
  const plants = new Map<string, string[]>();
  for (const { taxon, statements } of key.guidance.values())
    for (const { topic, text } of statements)
      if (topic === 'safety') plants.set(text, [...(plants.get(text) ?? []), taxon]);
  return {
    general: key.cautions.map((text) => wording.say(text)),
    looking: [...new Set(looking)].map((text) => wording.say(text)),
    plants: [...plants].map(([text, taxa]) => ({ names: named(taxa), text: wording.say(text) })),
  };
}
