import { describe, expect, test } from 'vitest';
import { streambank } from '../../../tests/support/streambank.ts';
import type { Key, Statement, Taxon } from '../../key/index.ts';
import { en, wordsFor } from '../../words/index.ts';
import { handoutFile, handoutOf } from './index.ts';
import { asText, tag } from './piece.ts';

const { key } = streambank();
const plant = (id: string): Taxon => {
  const found = key.taxa.find((taxon) => taxon.id === id);
  if (found === undefined) throw new Error(`the key has no ${id}`);
  return found;
};
const english = { language: 'en', words: en };
const withGuidance = (statements: readonly Statement[]): Key => ({
  ...key,
  guidance: new Map([['arundo-donax', { taxon: 'arundo-donax', reviewed: '2026-11-25', statements }]]),
});

describe('a hand-out', () => {
  test('of every plant leaves out nothing on what to do, what not to do, when, whom to ask and how to keep safe', () => {
    for (const taxon of key.taxa) {
      const said = handoutOf(key, taxon, english).topics.flatMap((topic) => topic.said.map(({ text }) => text));
      const must = key.guidance
        .get(taxon.id)
        ?.statements.filter(({ topic }) => ['do', 'dont', 'when', 'who', 'safety'].includes(topic));
      expect(said).toEqual(expect.arrayContaining((must ?? []).map(({ text }) => text)));
    }
  });

  test('names natives first among the look-alikes of an invader, three at most, and counts the rest', () => {
    const { alike, moreAlike } = handoutOf(key, plant('arundo-donax'), english);
    expect(alike.map(({ name }) => name.status)).toEqual(['native', 'native', 'native']);
    const pairs = key.lookalikes.filter(({ taxa }) => taxa.includes('arundo-donax'));
    expect(moreAlike).toBe(pairs.length - 3);
  });

  test('numbers each source once, in the order in which it is met, and each statement by them', () => {
    const { topics, sources } = handoutOf(key, plant('arundo-donax'), english);
    expect(new Set(sources).size).toBe(sources.length);
    const numbers = topics.flatMap(({ said }) => said.flatMap((one) => one.sources));
    expect(new Set(numbers)).toEqual(new Set(sources.map((_, i) => i + 1)));
  });

  test('is in the language asked for, words and sentences alike', async () => {
    const handout = handoutOf(key, plant('arundo-donax'), { language: 'es-MX', words: await wordsFor('es') });
    expect(handout.language).toBe('es');
    expect(handout.name.common).toBe('carrizo gigante');
    expect(handout.topics.map(({ heading }) => heading)).toContain('No haga');
    expect(handout.edition).toContain('25 de noviembre de 2026');
  });

  test('of a plant without guidance says to leave it and ask', () => {
    const page = handoutFile(handoutOf({ ...key, guidance: new Map() }, plant('arundo-donax'), english));
    expect(page).toContain('Leave it as it is, and ask before you do anything.');
  });

  test('shows whom to ask, or a line to write on', () => {
    const contact = { phone: '555-0142', mail: 'creek@example.org' };
    const page = handoutFile(handoutOf(key, plant('arundo-donax'), { ...english, contact }));
    expect(page).toContain('<b>Phone: </b>555-0142');
    expect(page).toContain('<b>Mail: </b>creek@example.org');
    expect(handoutFile(handoutOf(key, plant('arundo-donax'), english))).toContain('Name and number:');
  });
});

describe('what is written', () => {
  test('is text, however much it looks like markup', () => {
    const text = `<img src=x onerror="alert(1)"> & '`;
    const page = handoutFile(
      handoutOf(withGuidance([{ topic: 'do', text, source: ['memory'] }]), plant('arundo-donax'), {
        ...english,
        contact: { phone: '<b>1</b>' },
      }),
    );
    expect(page).not.toContain('<img');
    expect(page).toContain('&lt;img src=x onerror=&quot;alert(1)&quot;&gt; &amp; &#39;');
    expect(page).toContain('&lt;b&gt;1&lt;/b&gt;');
  });

  test('has its attributes escaped too', () => {
    expect(asText(tag('p', { title: '"<&' })('a', tag('b')('c')))).toBe('\n<p title="&quot;&lt;&amp;">a<b>c</b></p>');
  });
});
