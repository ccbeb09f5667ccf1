// The page on which a partner's webmaster chooses, looks and copies.
import { leastOf, OWN, type Palette, properties, type Scheme, take } from './colours.ts';
import { GOOD } from './contrast.ts';
import { needsOf } from './needs.ts';
import { type Finding, judge } from './policy/judge.ts';
import { parsePolicy } from './policy/parse.ts';
import { type Choice, snippet, type Way } from './snippets.ts';
import { words as wordsOf } from './words.ts';

const words = wordsOf(document.documentElement.lang);
const get = <E extends Element = HTMLElement>(selector: string) => document.querySelector<E>(selector) as E;
const form = get<HTMLFormElement>('#options');
const key = get('leadwort-key');
const swatches = [...form.querySelectorAll<HTMLInputElement>('input[type=color]')];
const palettes: Record<Scheme, Palette> = { ...OWN };
/** Fields that are attributes of the key as they stand. */
const PLAIN = [
  'lang',
  'beside',
  'units',
  'contact-phone',
  'contact-email',
  'areas',
  'endpoint',
  'link-parameter',
  'scheme',
];
/** Those that the preview shows as well: it fetches nothing from a partner's addresses, and keeps nothing. */
const SHOWN = ['lang', 'beside', 'units', 'contact-phone', 'contact-email', 'scheme'];

const ratio = (value: number) => `${(Math.floor(value * 10) / 10).toFixed(1)} : 1`;
const value = (id: string) => get<HTMLInputElement>(`#${id}`).value.trim();

function choice(): Choice {
  const data = new FormData(form);
  const said = (name: string) => `${data.get(name) ?? ''}`.trim();
  const src = said('key') === 'other' ? said('src') : '/keys/streambank.json';
  const attributes = new Map([['src', src || '/keys/...']]);
  for (const name of PLAIN) {
    const field = form.querySelector(`[name="${name}"]`);
    if (said(name) !== '' && field?.closest('[hidden]') === null) attributes.set(name, said(name));
  }
  if (data.has('keep')) attributes.set('keep', '');
  const base = value('base').replace(/\/*$/, '/');
  return {
    base,
    attributes,
    colours: properties(palettes),
    until: { text: words.until, phone: said('contact-phone') },
    title: words.frame,
  };
}

function show(): void {
  get('#elsewhere').hidden = value('key') !== 'other';
  const chosen = choice();
  for (const name of SHOWN) {
    const now = chosen.attributes.get(name);
    if (now === undefined) key.removeAttribute(name);
    else if (now !== key.getAttribute(name)) key.setAttribute(name, now);
  }
  for (const name of OWN.light.keys()) key.style.removeProperty(`--leadwort-${name}`);
  for (const [name, colour] of chosen.colours) key.style.setProperty(name, colour);
  for (const one of swatches) {
    one.value = palettes[one.dataset.scheme as Scheme].get(one.name) ?? '';
    const both = (['light', 'dark'] as const).map((scheme) => leastOf(one.name, palettes[scheme]));
    get<HTMLOutputElement>(`[data-contrast=${one.name}]`).value = ratio(Math.min(...both));
  }
  const way = get<HTMLInputElement>('[name=way]:checked').value as Way;
  const { code, css } = snippet(way, chosen);
  get('#code').textContent = code;
  get('#css').textContent = css;
  get('#styles').hidden = css === '';
  get('#answer').replaceChildren(...answer(way, chosen));
}

function answer(way: Way, chosen: Choice): HTMLElement[] {
  const pasted = parsePolicy(value('policy'));
  if (pasted.policies.length === 0) return [line(words.noPolicy)];
  if (pasted.reportOnly) return [line(words.reportOnly)];
  if (!URL.canParse(value('address'))) return [line(words.badAddress)];
  const page = new URL(value('address'));
  if (
    [chosen.base, ...['src', 'areas', 'endpoint'].map((name) => chosen.attributes.get(name) ?? '')].some(
      (one) => !URL.canParse(one, page),
    )
  )
    return [line(words.badAddress)];
  const findings = judge(pasted, needsOf(way, chosen, page), page);
  return findings.length === 0 ? [line(words.fine)] : findings.map(told);
}

function told({ why, directive, change, needs }: Finding): HTMLElement {
  const box = document.createElement('div');
  const list = document.createElement('ul');
  for (const { url, spare } of needs) {
    const item = document.createElement('li');
    item.textContent = `${url.host === '' ? `${url.protocol}…` : url.href}${spare ? ` (${words.spare})` : ''}`;
    list.append(item);
  }
  const code = document.createElement('code');
  code.textContent = change;
  const write = line(`${words.write}: `);
  write.append(code);
  box.append(line(`${words.why[why](directive)}:`), list, write);
  return box;
}

function line(text: string): HTMLElement {
  const paragraph = document.createElement('p');
  paragraph.textContent = text;
  return paragraph;
}

for (const one of swatches)
  one.addEventListener('change', () => {
    const scheme = one.dataset.scheme as Scheme;
    const { palette, least } = take(palettes[scheme], one.name, one.value);
    if (palette) palettes[scheme] = palette;
    get('#colour-note').textContent = palette
      ? least < GOOD
        ? words.weak(ratio(least))
        : ''
      : words.refused(ratio(least));
  });
get('#back').addEventListener('click', () => {
  Object.assign(palettes, OWN);
  get('#colour-note').textContent = '';
  show();
});
get<HTMLInputElement>('#narrow').addEventListener('change', ({ target }) =>
  get('.sheet').classList.toggle('narrow', (target as HTMLInputElement).checked),
);
for (const button of document.querySelectorAll<HTMLButtonElement>('[data-copy]'))
  button.addEventListener('click', async () => {
    const text = get(`#${button.dataset.copy}`).textContent ?? '';
    const done = await navigator.clipboard.writeText(text).then(
      () => true,
      () => false,
    );
    get('#copied').textContent = done ? words.copied : words.notCopied;
  });
form.addEventListener('submit', (event) => event.preventDefault());
document.addEventListener('input', show);
document.addEventListener('change', show);

await customElements.whenDefined('leadwort-key');
// What this version of the key does not know is not offered.
const { observedAttributes } = customElements.get('leadwort-key') as unknown as { observedAttributes: string[] };
for (const field of form.querySelectorAll<HTMLElement>('[data-needs]'))
  field.hidden = !observedAttributes.includes(field.dataset.needs ?? '');
show();
