// What is said on the way through the couplets of a key. Nobody needs it before the first answer.
import { html, nothing } from 'lit';
import type { Settings } from '../../contexts/index.ts';
import { type Taxon, translate } from '../../key/index.ts';
import type { Place, Snapshot } from '../../session/index.ts';
import { plantName, taxonOf } from '../shared/plant-name.ts';

interface Doing {
  readonly again: (character: string) => void;
  readonly on: (place: Place) => void;
}

/** That the water runs elsewhere, or that the couplets have come to their end. */
export function renderNotice(snapshot: Snapshot, { words, language }: Settings, { again, on }: Doing) {
  const { prepared, wrong, walk, way, question, asked } = snapshot;
  const { key } = prepared;
  const { couplet } = words;
  const names = (taxa: readonly Taxon[]) => words.common.or(taxa.map((taxon) => plantName(key, taxon, language).text));
  if (wrong && asked?.reason !== 'changing') {
    const { second } = wrong;
    const label = key.characters.find(({ id }) => id === second)?.label ?? '';
    return html`<p>${couplet.wrong(names(wrong.taxa.flatMap((t) => key.taxa[t] ?? [])))}</p>
      ${
        second === undefined
          ? nothing
          : html`<p>${couplet.second(translate(key, language, label))}</p>
            <button class="outline" type="button" @click=${() => again(second)}>${couplet.lookAgain}</button>`
      }
      <button class="outline" type="button" @click=${() => on(wrong.on)}>${couplet.carryOn}</button>`;
  }
  if (way !== 'couplets' || asked || walk === undefined || walk.at || walk.taxa.length === 0 || !question)
    return nothing;
  return html`<p>${couplet.out(names(walk.taxa.map((id) => taxonOf(prepared, id))))} ${couplet.notSettled}</p>`;
}
