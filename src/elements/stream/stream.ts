import { html, nothing, svg, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { Settings } from '../../contexts/index.ts';
import type { PreparedKey } from '../../key/index.ts';
import { type Branch, type Fork, type Forks, forksOf, type Snapshot, type Step, weights } from '../../session/index.ts';
import { leadWords } from '../shared/leads.ts';
import { LeadwortPart } from '../shared/part.ts';
import { plantName } from '../shared/plant.ts';
import { shared } from '../shared/styles.ts';
import { type Bed, bedOf, flowsOf } from './course.ts';
import { type Drawing, draw, HEIGHT, MOUTHS, type Mouth, NAMES, WIDTH } from './drawing.ts';
import { streamStyles } from './stream.styles.ts';

/** A mouth is named from this share of the water on (ours). */
const WORTH_NAMING = 0.05;
/** About the width of a letter in the drawing's units, so that a long name stays on the paper. */
const LETTER = 10;
/** Names in the sentence that stands for the picture. */
const IN_SENTENCE = 3;

/**
 * The branching key as a stream: it forks where the key forks, each branch as wide as the weight of the standing that runs
 * down it, so that a wrong turn shows as water running elsewhere. Beside it the same as an outline.
 *
 * @summary Where the answers lead in the key, drawn as a stream.
 *
 * @tag leadwort-stream
 * @csspart drawing - The picture.
 * @csspart outline - The same in words.
 */
export class LeadwortStream extends LeadwortPart {
  static override styles = [shared, streamStyles];

  #bed: { readonly of: Forks; readonly bed: Bed } | undefined;

  #bedOf(forks: Forks): Bed {
    if (this.#bed?.of !== forks) this.#bed = { of: forks, bed: bedOf(forks) };
    return this.#bed.bed;
  }

  override render(): TemplateResult | typeof nothing {
    const { snapshot, settings } = this;
    const forks = snapshot && forksOf(snapshot.prepared);
    if (!snapshot || !settings || !forks || !snapshot.walk) return nothing;
    const { prepared, identification, answered, walk } = snapshot;
    const p = new Float64Array(prepared.key.taxa.length);
    for (const { taxon, probability } of identification.standing)
      p[prepared.taxonIndex.get(taxon) as number] = probability;
    const named = answered === 0 ? [] : namedOf(forks, p);
    const here = snapshot.asked?.fork ?? walk.at;
    const drawing = draw(forks, this.#bedOf(forks), flowsOf(forks, p), walk.path, here, named);
    return html`${this.#renderDrawing(drawing, prepared, named, settings)}${this.#renderOutline(snapshot, p, settings)}`;
  }

  #name({ key }: PreparedKey, taxon: number, { language }: Settings): string {
    const known = key.taxa[taxon];
    return known ? plantName(key, known, language).text : '';
  }

  #renderDrawing(
    drawing: Drawing,
    prepared: PreparedKey,
    named: readonly number[],
    settings: Settings,
  ): TemplateResult {
    const { stream, common } = settings.words;
    const { water, course, here, mouths } = drawing;
    const names = named.slice(0, IN_SENTENCE).map((taxon) => this.#name(prepared, taxon, settings));
    const sentence = names.length > 0 ? stream.picture(common.list(names)) : stream.source(prepared.key.taxa.length);
    return html`<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label=${sentence} part="drawing">
      <g class="water">${repeat(
        water,
        ({ id }) => id,
        ({ d }) => svg`<path d=${d} />`,
      )}</g>
      <g class="course">${repeat(
        course,
        ({ id }) => id,
        ({ d, open }) => svg`<path class=${open ? 'open' : ''} d=${d} />`,
      )}</g>
      ${here ? svg`<circle class="here" cx=${here.x} cy=${here.y} r="7" />` : nothing}
      <g class="mouths">${mouths.map(({ x, y }) => svg`<path d="M${x} ${MOUTHS + 3}V${y}" />`)}${mouths.map((mouth) => this.#renderMouth(mouth, this.#name(prepared, mouth.taxon, settings)))}</g>
    </svg>`;
  }

  #renderMouth({ x, y, side }: Mouth, name: string): TemplateResult {
    const long = name.length * LETTER;
    const at = side === 'left' ? Math.max(x - 6, long) : Math.min(x + 6, WIDTH - long);
    return svg`<text class=${side} x=${at} y=${y}>${name}</text>`;
  }

  #renderOutline(snapshot: Snapshot, p: Float64Array, { words }: Settings): TemplateResult {
    const { path = [], at } = snapshot.walk ?? {};
    return html`<details part="outline">
      <summary>${words.stream.outline}</summary>
      ${this.#renderSteps(snapshot, path, at, p)}
    </details>`;
  }

  #renderSteps(
    snapshot: Snapshot,
    [step, ...rest]: readonly Step[],
    at: Fork | undefined,
    p: Float64Array,
  ): TemplateResult | typeof nothing {
    const fork = step?.fork ?? at;
    if (fork === undefined) return nothing;
    return html`<ol>
      <li>${this.#renderFork(snapshot, fork, step, p)}${step ? this.#renderSteps(snapshot, rest, at, p) : nothing}</li>
    </ol>`;
  }

  #renderFork({ prepared, trail }: Snapshot, fork: Fork, step: Step | undefined, p: Float64Array): TemplateResult {
    const { stream } = this.saying.words;
    const { key, characterIndex } = prepared;
    const { character } = fork;
    const known = key.characters[characterIndex.get(character ?? '') ?? -1];
    const here = step ? (step.open ? ` (${stream.untold})` : '') : `: ${stream.here}`;
    const shares = step?.weights ?? weights(fork, p);
    const all = shares.reduce((sum, share) => sum + share, 0);
    const again = known && trail.some((answer) => answer.character === character) ? known : undefined;
    return html`<p class="quiet">${stream.fork(fork.number)}${known ? html` · ${this.say(known.label)}` : nothing}${here}</p>
      <ul class="leads">
        ${fork.branches.map((branch, i) =>
          this.#renderLead(
            prepared,
            branch,
            all > 0 ? (shares[i] as number) / all : 0,
            step?.open === false && i === step.lead,
          ),
        )}
      </ul>
      ${
        again && step
          ? html`<button class="plain" type="button" @click=${() => this.request('ask', { character: again.id })}>
            ${stream.lookAgain}<span class="unseen">: ${this.say(again.label)}</span>
          </button>`
          : nothing
      }`;
  }

  #renderLead(prepared: PreparedKey, { lead, taxa }: Branch, share: number, taken: boolean): TemplateResult {
    const { words } = this.saying;
    const ends = taxa.map((id) =>
      this.#name(prepared, prepared.taxonIndex.get(id) as number, this.settings as Settings),
    );
    return html`<li class=${taken ? 'taken' : ''}>
      <b>${leadWords(prepared, lead, this.saying).title}</b>
      <span class="quiet"
        >${taken ? `(${words.stream.taken}) ` : nothing}${words.stream.share(share)}${ends.length > 0 ? `: ${words.common.or(ends)}` : nothing}</span
      >
    </li>`;
  }
}

/** Indices of the taxa that hold a share of the key's water worth naming, most first. */
function namedOf(forks: Forks, p: Float64Array): number[] {
  const taxa = [...forks.first.places.keys()];
  const all = taxa.reduce((sum, t) => sum + (p[t] as number), 0);
  return taxa
    .filter((t) => (p[t] as number) >= WORTH_NAMING * all)
    .sort((a, b) => (p[b] as number) - (p[a] as number))
    .slice(0, NAMES);
}

declare global {
  interface HTMLElementTagNameMap {
    'leadwort-stream': LeadwortStream;
  }
}
