// Comes when an element is named as a field of a form: what it says goes along as JSON.
import {
  type Character,
  formatMeasure,
  type KeyAnswer,
  type PreparedKey,
  systemOf,
  translate,
} from '../../key/index.ts';
import type { SessionStore, Snapshot } from '../../session/index.ts';
import { LinkError, readLink, writeLink } from '../../session/link/index.ts';
import { type RestoredTrail, restoreTrail } from '../../session/restore.ts';
import { first, wordsFor } from '../../words/index.ts';
import { type Carry, type Carrying, following, speak } from './carried.ts';
import { languageAt } from './language.ts';
import { plantName, taxonOf } from './plant-name.ts';

/** What is sent under the element's name. It says nothing of a person or a place. */
export interface FieldValue {
  /** Id and version of the key. */
  readonly key: string;
  readonly version: string;
  readonly verdict: Snapshot['identification']['verdict']['kind'];
  /** As of the verdict: ids with names; none outside the key. */
  readonly taxa: readonly { readonly id: string; readonly name: string; readonly scientific: string }[];
  /** Of the first of them, or of a plant that the key does not have; 0 to 1. */
  readonly probability: number;
  /** In the order of the answers: ids, and as the person saw the character and the answer; no words for what was skipped. */
  readonly trail: readonly (KeyAnswer & { readonly label: string; readonly words: string })[];
}

/** The value for what was answered so far; `language` is that of its words, where the key has it. */
export function fieldValue({ prepared, identification, trail }: Snapshot, language: string): FieldValue {
  const { key } = prepared;
  const { verdict, standing, outside } = identification;
  const say = (sentence: string) => translate(key, language, sentence);
  const list = new Intl.ListFormat(language, { type: 'disjunction' });
  const wordsOf = (answer: KeyAnswer, { states }: Character) => {
    if ('skipped' in answer) return '';
    if ('value' in answer)
      return formatMeasure(answer.value, answer.unit, { system: systemOf(answer.unit) ?? key.units, locale: language });
    return list.format(states.filter(({ id }) => answer.states.includes(id)).map(({ label }) => say(label)));
  };
  return {
    key: key.id,
    version: key.version,
    verdict: verdict.kind,
    taxa: verdict.taxa.map((id) => {
      const taxon = taxonOf(prepared, id);
      return { id, name: plantName(key, taxon, language).text, scientific: taxon.name };
    }),
    probability: standing.find(({ taxon }) => taxon === verdict.taxa[0])?.probability ?? outside,
    trail: trail.map((answer) => {
      const character = key.characters[prepared.characterIndex.get(answer.character) as number] as Character;
      return { ...answer, label: say(character.label), words: wordsOf(answer, character) };
    }),
  };
}

/** A tag that `Intl` takes; English where the page says none. */
function languageOf(host: HTMLElement): string {
  try {
    return Intl.getCanonicalLocales(languageAt(host))[0] ?? 'en';
  } catch {
    return 'en';
  }
}

/** An element gets its internals once; its key may come many times. */
interface Field {
  readonly internals: ElementInternals;
  store?: SessionStore;
}
const fields = new WeakMap<HTMLElement, Field>();

function fieldOf(host: Carrying): Field {
  const known = fields.get(host);
  if (known) return known;
  const field: Field = { internals: host.attachInternals() };
  fields.set(host, field);
  // The form is about to say why it is held, beside the question that stands there now.
  host.addEventListener('invalid', () => hold(host, field));
  return field;
}

export const carry: Carry = async (host, prepared) => {
  const field = fieldOf(host);
  const write = (store: SessionStore) => {
    const { snapshot } = store;
    const language = languageOf(host);
    field.store = store;
    if (snapshot.trail.length === 0) field.internals.setFormValue(null);
    else field.internals.setFormValue(JSON.stringify(fieldValue(snapshot, language)), writeLink(snapshot, language));
    hold(host, field);
  };
  return { keeper: following(write, true), restored: stateOf(host, prepared) };
};

/** What the browser gave back. What it filled in from elsewhere is none of ours, and is left. */
function stateOf(host: Carrying, prepared: PreparedKey): RestoredTrail | undefined {
  const text = host.formState;
  host.formState = '';
  try {
    const link = text ? readLink(text) : undefined;
    if (link?.key !== prepared.key.id) return undefined;
    speak(host, link.language, prepared.key);
    return restoreTrail(prepared, link);
  } catch (error) {
    if (!(error instanceof LinkError)) throw error;
    return undefined;
  }
}

/** A required one holds the form until a verdict stands; whoever has nothing left to answer is not held. */
function hold(host: Carrying, field: Field): void {
  const { internals, store } = field;
  if (store === undefined) return;
  const { answered, identification, question, asked } = store.snapshot;
  const stands = answered > 0 && (identification.verdict.kind !== 'open' || !(question ?? asked));
  if (!host.required || stands) {
    internals.setValidity({});
    return;
  }
  const words = wordsFor(languageOf(host));
  const coming = words instanceof Promise;
  const shown = host.shadowRoot?.querySelector('[part=question]')?.shadowRoot;
  const heading = shown?.querySelector<HTMLElement>('[role=heading]') ?? undefined;
  internals.setValidity({ valueMissing: true }, coming ? first.common.loading : words.key.unanswered, heading);
  if (coming)
    words.then(
      () => hold(host, field),
      () => undefined,
    );
}
