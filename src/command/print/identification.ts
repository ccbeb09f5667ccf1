// What `identify` prints for people: the verdict in a sentence, the standing, why, what next, and the cautions.
import type { Character, Identification, Inquiry, Key, Taxon, TaxonStanding } from '../../key/index.ts';
import { en } from '../../words/index.ts';
import type { Paint } from '../paint.ts';
import { commonName } from './names.ts';
import { count, percent, table } from './table.ts';
import { verdictLines } from './verdict.ts';

/** Rows of the standing, reasons of a plant and proposals that are told before the rest is only counted. */
const MOST_ROWS = 8;
const MOST_REASONS = 6;
const MOST_NEXT = 3;
/** From this chance of having been misread on, an answer is worth a second look (ours). */
const WORTH_A_LOOK = 0.5;

export function identificationReport(key: Key, inquiry: Inquiry, found: Identification, paint: Paint): string {
  const view = new View(key, inquiry, found, paint);
  return `${[
    view.title(),
    verdictLines(key, found, paint),
    view.standing(),
    ...view.why(),
    view.secondLooks(),
    view.next(),
    view.cautions(),
  ]
    .filter((part) => part.length > 0)
    .map((part) => part.join('\n'))
    .join('\n\n')}\n`;
}

class View {
  readonly #key: Key;
  readonly #inquiry: Inquiry;
  readonly #found: Identification;
  readonly #paint: Paint;
  readonly #taxa: ReadonlyMap<string, Taxon>;
  readonly #characters: ReadonlyMap<string, Character>;

  constructor(key: Key, inquiry: Inquiry, found: Identification, paint: Paint) {
    this.#key = key;
    this.#inquiry = inquiry;
    this.#found = found;
    this.#paint = paint;
    this.#taxa = new Map(key.taxa.map((taxon) => [taxon.id, taxon]));
    this.#characters = new Map(key.characters.map((character) => [character.id, character]));
  }

  title(): string[] {
    const { month, observer, answers } = this.#inquiry;
    const skipped = answers.filter((answer) => 'skipped' in answer).length;
    const parts = [
      en.common.months[month],
      `observer: ${observer}`,
      `${count(answers.length - skipped, 'answer')}${skipped === 0 ? '' : `, ${skipped} skipped`}`,
    ];
    return [this.#paint('quiet', `${this.#key.title} (${this.#key.id} ${this.#key.version}); ${parts.join('; ')}`)];
  }

  standing(): string[] {
    const { standing, outside } = this.#found;
    const shown = standing.slice(0, MOST_ROWS);
    const rest = standing.slice(MOST_ROWS);
    const rows = shown.map(({ taxon, name, probability }) => {
      const known = this.#taxon(taxon);
      return [percent(probability), commonName(this.#key, known), name, en.common.status[known.status]];
    });
    if (rest.length > 0) {
      const sum = rest.reduce((total, { probability }) => total + probability, 0);
      rows.push([percent(sum), count(rest.length, 'other plant') + (rest.length === 1 ? '' : ' together'), '', '']);
    }
    rows.push([percent(outside), 'not in this key', '', '']);
    const width = Math.max(...rows.map(([share = '']) => share.length));
    const aligned = rows.map(([share = '', ...others]) => [share.padStart(width), ...others]);
    const painted = table(aligned, (cell, column) =>
      column === 3 && cell === en.common.status.invasive ? this.#paint('stop', cell) : cell,
    );
    return [this.#heading('Standing'), ...painted.map((line) => `  ${line}`)];
  }

  /** For and against each plant that the verdict names; outside the key, the one that comes nearest. */
  why(): string[][] {
    const { verdict, standing } = this.#found;
    const named = standing.filter(({ taxon }) => verdict.taxa.includes(taxon));
    return (named.length > 0 ? named : standing.slice(0, 1)).map((one) => this.#reasons(one));
  }

  #reasons({ taxon, for: speaksFor, against, unseen }: TaxonStanding): string[] {
    const line = (sign: string, ids: readonly string[]) =>
      ids.slice(0, MOST_REASONS).map((id) => `  ${sign}  ${this.#said(id)}`);
    return [
      this.#heading(`For and against ${commonName(this.#key, this.#taxon(taxon))}`),
      ...line(this.#paint('good', 'for    '), speaksFor),
      ...line(this.#paint('warn', 'against'), against),
      ...(speaksFor.length + against.length === 0 ? ['  no answer says much either way'] : []),
      this.#paint('quiet', `  ${count(unseen.length, 'more character')} known of it and not looked at`),
    ];
  }

  secondLooks(): string[] {
    if (this.#found.verdict.kind === 'settled') return [];
    const worth = this.#found.recheck.filter(({ gain }) => gain >= WORTH_A_LOOK).slice(0, 2);
    if (worth.length === 0) return [];
    return [this.#heading('Worth a second look'), ...worth.map(({ character }) => `  ${this.#said(character)}`)];
  }

  next(): string[] {
    const next = this.#found.next.slice(0, MOST_NEXT);
    if (next.length === 0) return [];
    return [
      this.#heading('Look at next'),
      ...next.flatMap(({ character, effort }) => {
        const { question, caution } = this.#character(character);
        return [
          `  ${question} ${this.#paint('quiet', `(${character}, ${effort})`)}`,
          ...(caution === undefined ? [] : [`    ${this.#paint('warn', 'First:')} ${caution}`]),
        ];
      }),
    ];
  }

  cautions(): string[] {
    const { cautions } = this.#key;
    return cautions.length === 0
      ? []
      : [this.#paint('stop', 'Before anyone acts'), ...cautions.map((text) => `  ${text}`)];
  }

  #heading(text: string): string {
    return this.#paint('heading', text);
  }

  /** `Leaf shape: heart or oval (guess)`, as it was answered. */
  #said(id: string): string {
    const { label, states } = this.#character(id);
    const answer = this.#inquiry.answers.find(({ character }) => character === id);
    if (answer === undefined || 'skipped' in answer) return label;
    const sureness = answer.sureness === 'sure' ? '' : ` (${answer.sureness})`;
    if ('value' in answer)
      return `${label}: ${answer.value}${answer.unit === 'count' ? '' : ` ${answer.unit}`}${sureness}`;
    const labels = answer.states.map((state) => states.find((one) => one.id === state)?.label ?? state);
    return `${label}: ${en.common.or(labels)}${sureness}`;
  }

  // Ids come from the identification of this very key.
  #taxon(id: string): Taxon {
    return this.#taxa.get(id) as Taxon;
  }

  #character(id: string): Character {
    return this.#characters.get(id) as Character;
  }
}
