// What a person may set: month, units, who is looking, language.
import { html, nothing, type TemplateResult } from 'lit';
import type { Settings } from '../../contexts/index.ts';
import type { Key, Month, PreparedKey } from '../../key/index.ts';
import { observersOf, type RequestName, type Requests, type Snapshot } from '../../session/index.ts';
import type { Own } from '../practice/own.ts';

/** The element whose language and units are set. */
interface Holder {
  lang: string;
  units: string;
  requestUpdate(): void;
}
type Send = <Name extends RequestName>(name: Name, detail: Requests[Name]) => void;

/** No id of an observer is empty. */
const OWN = '';
const SYSTEMS = ['us', 'metric'] as const;
const chosenIn = (event: Event) => (event.target as HTMLInputElement | HTMLSelectElement).value;

const looked = new Set<string>();

/** Reports that found no signal when the page was last open go now. `key` is the key's id. */
export async function sendWaiting(endpoint: string, key: string): Promise<void> {
  if (!endpoint || looked.has(key)) return;
  looked.add(key);
  // Nothing was ever kept here: then nothing waits, and what sends need not come.
  if (await isEmpty(`leadwort ${key}`)) return;
  await (await import('../report/queue.ts')).queueOf(key);
}

/** Whether nothing was ever kept under this name. False where the browser does not say. */
async function isEmpty(database: string): Promise<boolean> {
  const kept = await indexedDB.databases?.();
  return kept?.some(({ name }) => name === database) === false;
}

/** How whoever practised on this device reads; looked for when the settings are opened. */
const owns = new WeakMap<Key, Own>();

async function seekOwn(holder: Holder, prepared: PreparedKey): Promise<void> {
  const { key } = prepared;
  if (owns.get(key)?.prepared === prepared || (await isEmpty(`leadwort practice ${key.id}`))) return;
  const own = await (await import('../practice/define.ts')).ownOf(prepared);
  if (own) owns.set(key, own);
  else owns.delete(key);
  holder.requestUpdate();
}

export function renderSettings(holder: Holder, snapshot: Snapshot, settings: Settings, send: Send): TemplateResult {
  const { words, units } = settings;
  const { month, observer, prepared } = snapshot;
  const months = Object.entries(words.common.months).map(([number, name]) => ({ number: Number(number), name }));
  const nameOf = (id: string) => words.key.observers.get(id) ?? id;
  const own = owns.get(prepared.key);
  const asOwn = own?.prepared === prepared;
  const chooseObserver = (event: Event) => {
    const chosen = chosenIn(event);
    if (own && chosen === OWN) send('reading', { prepared: own.prepared, observer: own.observer });
    else if (own && asOwn) send('reading', { prepared: own.usual, observer: chosen });
    else send('observer', { observer: chosen });
  };
  // Where nothing is kept, or the network is gone, the choice is not there.
  const opens = ({ currentTarget }: Event) => {
    if ((currentTarget as HTMLDetailsElement).open) seekOwn(holder, prepared).catch(() => undefined);
  };
  return html`<details class="settings" @toggle=${opens}>
    <summary>
      ${words.key.settings}
      <span class="quiet">${words.common.months[month]}, ${words.key.system[units].toLocaleLowerCase(words.language)}</span>
    </summary>
    <div class="fields">
      <label class="field">
        <span>${words.key.month}</span>
        <select @change=${(event: Event) => send('month', { month: Number(chosenIn(event)) as Month })}>
          ${months.map(({ number, name }) => html`<option value=${number} ?selected=${number === month}>${name}</option>`)}
        </select>
      </label>
      <label class="field">
        <span>${words.key.observer}</span>
        <select class="observer" @change=${chooseObserver}>
          ${observersOf(prepared.key).map(
            (id) => html`<option value=${id} ?selected=${!asOwn && id === observer}>${nameOf(id)}</option>`,
          )}
          ${own ? html`<option value=${OWN} ?selected=${asOwn}>${words.key.own(own.name)}</option>` : nothing}
        </select>
        ${own && asOwn ? html`<small class="quiet" role="status">${words.key.ownSays(own.readings)}</small>` : nothing}
      </label>
      <fieldset class="field">
        <legend>${words.key.units}</legend>
        ${SYSTEMS.map(
          (system) => html`<label class="target radio">
            <input
              type="radio"
              name="units"
              value=${system}
              .checked=${system === units}
              @change=${() => {
                holder.units = system;
              }}
            />
            ${words.key.system[system]}
          </label>`,
        )}
      </fieldset>
      ${renderLanguages(holder, snapshot, settings)}
    </div>
  </details>`;
}

/** A button for each other language of the key, named in that language. */
function renderLanguages(holder: Holder, { prepared }: Snapshot, { words }: Settings): TemplateResult | typeof nothing {
  const others = prepared.key.languages.filter((language) => language !== words.language);
  if (others.length === 0) return nothing;
  return html`<div class="field languages" role="group" aria-label=${words.key.language}>
    ${others.map(
      (language) => html`<button
        class="outline"
        type="button"
        lang=${language}
        @click=${() => {
          holder.lang = language;
        }}
      >
        ${nameOf(language)}
      </button>`,
    )}
  </div>`;
}

/** A language's name in itself, with a capital: "Español". */
function nameOf(language: string): string {
  const name = new Intl.DisplayNames([language], { type: 'language' }).of(language) ?? language;
  return name.charAt(0).toLocaleUpperCase(language) + name.slice(1);
}
