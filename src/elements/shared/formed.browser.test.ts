import { fixture } from '@open-wc/testing';
import { html } from 'lit';
import { describe, expect, test, vi } from 'vitest';
import { addressOf, freeBundle, smallBundle } from '../../../tests/support/small-bundle.ts';
import '../key/define.ts';
import type { SessionStore } from '../../session/index.ts';
import { en } from '../../words/en.ts';
import { es } from '../../words/es.ts';
import type { LeadwortKey } from '../key/key.ts';
import type { FieldValue } from './formed.ts';

const storeOf = (key: LeadwortKey) => {
  const { state } = (key as unknown as { provider: { state: { phase: string; store: SessionStore } } }).provider;
  return state.phase === 'ready' ? state.store : undefined;
};
async function opened({ required = false, bundle = smallBundle as unknown, lang = 'en' } = {}) {
  const form = await fixture<HTMLFormElement>(html`<form>
    <fieldset>
      <input name="about" value="the bend" />
      <leadwort-key name="plant" lang=${lang} month="9" ?required=${required} src=${addressOf(bundle)}></leadwort-key>
    </fieldset>
  </form>`);
  const key = form.querySelector('leadwort-key') as LeadwortKey;
  await expect.poll(() => storeOf(key) !== undefined).toBe(true);
  const store = () => storeOf(key) as SessionStore;
  const value = () => {
    const text = new FormData(form).get('plant');
    return text === null ? null : (JSON.parse(`${text}`) as FieldValue);
  };
  return { form, key, store, value };
}
type Opened = Awaited<ReturnType<typeof opened>>;
const answer = ({ store }: Opened, character: string, ...states: string[]) =>
  store().request('answer', { answer: { character, states, sureness: 'sure' } });
const habitat = smallBundle.characters.characters.find(({ id }) => id === 'habitat');
const [first, second] = habitat?.states ?? [];

describe('a key in a form', () => {
  test('sends nothing before the first answer, then ids and words as JSON', async () => {
    const at = await opened();
    expect([...new FormData(at.form).keys()]).toEqual(['about']);
    answer(at, 'habitat', first?.id ?? '', second?.id ?? '');
    const { identification } = at.store().snapshot;
    expect(at.value()).toMatchObject({
      key: smallBundle.key.id,
      version: smallBundle.key.version,
      verdict: identification.verdict.kind,
      trail: [{ character: 'habitat', label: habitat?.label, states: [first?.id, second?.id], sureness: 'sure' }],
    });
    expect(at.value()?.trail[0]?.words).toBe(`${first?.label} or ${second?.label}`);
    expect(at.value()?.taxa.map(({ id }) => id)).toEqual(identification.verdict.taxa);
    const taxon = smallBundle.taxa.taxa.find(({ id }) => id === identification.verdict.taxa[0]);
    expect(at.value()?.taxa[0]?.scientific).toBe(taxon?.name);
    expect(at.value()?.probability).toBe(identification.standing[0]?.probability);
  });

  test('sends words in the language it is read in', async () => {
    const at = await opened({ lang: 'es' });
    answer(at, 'growth-form', 'tall-cane', 'grass');
    expect(at.value()?.trail[0]?.label).toBe('Tipo de planta');
    expect(at.value()?.trail[0]?.words).toContain(' o ');
  });

  test('starts with a new plant when the form is reset', async () => {
    const at = await opened();
    answer(at, 'habitat', first?.id ?? '');
    at.form.reset();
    expect(at.store().snapshot.trail).toEqual([]);
    expect(at.value()).toBeNull();
  });

  test('is left out of what is sent while it is disabled, and can still be read and answered', async () => {
    const at = await opened({ required: true });
    answer(at, 'habitat', first?.id ?? '');
    expect(at.form.checkValidity()).toBe(at.store().snapshot.identification.verdict.kind !== 'open');
    (at.form.querySelector('fieldset') as HTMLFieldSetElement).disabled = true;
    expect([...new FormData(at.form).keys()]).toEqual([]);
    at.store().request('restart', {});
    expect(at.form.checkValidity()).toBe(true);
    answer(at, 'habitat', second?.id ?? '');
    (at.form.querySelector('fieldset') as HTMLFieldSetElement).disabled = false;
    expect(at.value()?.trail[0]).toMatchObject({ states: [second?.id] });
  });

  test('takes back what the browser held for it, and leaves what is none of its own', async () => {
    const at = await opened();
    at.key.formStateRestoreCallback(`1_${smallBundle.key.id}_${smallBundle.key.version}_es_9_novice_c__habitat.x`);
    await expect.poll(() => storeOf(at.key)?.snapshot.trail).toEqual([{ character: 'habitat', skipped: true }]);
    expect(at.key.lang).toBe('es');
    at.key.formStateRestoreCallback('somebody@example.org');
    await expect.poll(() => storeOf(at.key)?.snapshot.trail).toEqual([]);
  });

  test('that is required holds the form at its question until a verdict stands', async () => {
    const at = await opened({ required: true, bundle: freeBundle });
    const heading = () =>
      at.key.renderRoot.querySelector('[part=question]')?.shadowRoot?.querySelector('[role=heading]');
    await expect.poll(heading).toBeTruthy();
    expect(at.form.checkValidity()).toBe(false);
    expect(at.form.reportValidity()).toBe(false);
    expect(document.activeElement).toBe(at.key);
    expect(at.key.renderRoot.querySelector('[part=question]')?.shadowRoot?.activeElement).toBe(heading());
    // Passes all over that is asked: nothing is left to answer, and nobody is held for it.
    while (at.store().snapshot.question) {
      expect(at.form.checkValidity()).toBe(false);
      const { question } = at.store().snapshot;
      const character = at.store().snapshot.prepared.key.characters.find(({ id }) => id === question?.character);
      answer(at, character?.id ?? '', character?.states[0]?.id ?? '');
      if (at.store().snapshot.identification.verdict.kind !== 'open') break;
    }
    expect(at.form.checkValidity()).toBe(true);
    at.form.reset();
    expect(at.form.checkValidity()).toBe(false);
  });

  test.each([
    ['en', en],
    ['es', es],
  ] as const)('says why it holds the form, in %s', async (lang, words) => {
    const said = vi.spyOn(ElementInternals.prototype, 'setValidity');
    const at = await opened({ required: true, lang });
    const last = () => said.mock.lastCall?.slice(0, 2);
    await expect.poll(last).toEqual([{ valueMissing: true }, words.key.unanswered]);
    at.store().request('restart', {});
    expect(last()).toEqual([{ valueMissing: true }, words.key.unanswered]);
    said.mockRestore();
  });

  test('without a name is no field', async () => {
    const form = await fixture<HTMLFormElement>(
      html`<form><leadwort-key required src=${addressOf(smallBundle)}></leadwort-key></form>`,
    );
    const key = form.querySelector('leadwort-key') as LeadwortKey;
    await expect.poll(() => storeOf(key) !== undefined).toBe(true);
    expect(key.hasAttribute('name')).toBe(false);
    expect(form.checkValidity()).toBe(true);
  });
});
