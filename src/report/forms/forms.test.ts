import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aFind, findArbitrary } from '../../../tests/support/finds.ts';
import { streambank } from '../../../tests/support/streambank.ts';
import { en } from '../../words/en.ts';
import { es } from '../../words/es.ts';
import { type Find, PHOTOS } from '../find/index.ts';
import { formWords, MOST_ADDRESS, mailOf, mailto, reportOf } from './index.ts';

const { key } = streambank();
const WORDS = { en: formWords(en), es: formWords(es) };
const form = (find: Find, language: 'en' | 'es' = 'en') => ({
  find,
  key,
  words: WORDS[language],
  units: 'us' as const,
});
const mail = (find: Find, language: 'en' | 'es' = 'en') => mailOf(form(find, language));
const held = { contact: false, exactPlace: false, photos: false };

describe('a report in words', () => {
  const find = aFind({ review: { status: 'photo-wanted', by: 'R. Example', date: '2026-09-20', wanted: ['collar'] } });

  test.each(['en', 'es'] as const)('has all that a specialist confirms from, in %s', (language) => {
    const own = WORDS[language].own;
    const { sections, lead, cautions } = reportOf(form(aFind({}, 'giant-reed', language), language));
    expect(sections.map(({ id }) => id)).toEqual([
      'where',
      'answers',
      'standing',
      'stand',
      'photos',
      'person',
      'about',
    ]);
    expect(lead.at(-1)).toBe(own.unconfirmed);
    expect(cautions.items.length).toBeGreaterThanOrEqual(key.cautions.length);
    const answers = sections.find(({ id }) => id === 'answers')?.table?.rows ?? [];
    expect(answers).toHaveLength(find.trail.length);
    expect(answers.every((row) => row.length === 4 && row.every((cell) => cell !== ''))).toBe(true);
  });

  test('says what was given in the units in which it was given', () => {
    const stand = reportOf(form(find)).sections.find(({ id }) => id === 'stand')?.facts ?? [];
    const text = stand.map(([, value]) => value.replaceAll('\u00a0', ' '));
    expect(text).toEqual(
      expect.arrayContaining([
        '120 ft',
        '0.5 ac',
        '1,800 ft²',
        '12 ft – 16 ft',
        'class 5 of 6, 75 to 95 % (Daubenmire)',
      ]),
    );
  });

  test('says what a specialist wants, and once it is confirmed no longer that it is not', () => {
    expect(mail(find).body).toContain(WORDS.en.own.photo.collar.title);
    const confirmed = aFind({
      review: { status: 'confirmed', taxon: 'arundo-donax', by: 'R. Example', date: '2026-09-20' },
    });
    expect(reportOf(form(confirmed)).lead).not.toContain(WORDS.en.own.unconfirmed);
    expect(mail(confirmed).body).toMatch(/Confirmed: .*Arundo donax/);
  });

  test('of a plant that was looked for and not seen does not say that it is there', () => {
    const none = aFind({ detected: false, effort: 'Walked 200 m', photos: [] });
    const { lead, sections } = reportOf(form(none));
    expect(lead[0]).toMatch(/^Looked for .*Arundo donax.* and saw none$/);
    expect(sections.map(({ id }) => id)).not.toContain('photos');
  });

  test.each(['en', 'es'] as const)(
    'names the plant that was looked for, not one that answers were about, in %s',
    (language) => {
      const sought = { taxon: 'colocasia-esculenta', name: 'Colocasia esculenta' };
      const none = aFind({ detected: false, sought, effort: 'Walked 200 m' }, 'giant-reed', language);
      for (const one of [form(none, language), { ...form(none, language), key: undefined }]) {
        const { lead, plant, sections, cautions } = reportOf(one);
        expect(plant).toContain('Colocasia esculenta');
        expect(JSON.stringify([lead, cautions, sections])).not.toContain('Arundo');
        expect(sections.map(({ id }) => id)).not.toContain('answers');
        expect(sections.map(({ id }) => id)).not.toContain('standing');
      }
      const { own } = WORDS[language];
      const { body, short } = mail(none, language);
      for (const text of [body, short]) {
        expect(text).toContain(`${own.effort}: Walked 200 m`);
        expect(text).toContain(`${own.looked}: 2026-09-14`);
      }
    },
  );

  test('of another key goes by the names in the find', () => {
    const other = aFind({ key: { id: 'another', version: '9', title: 'Another' } });
    expect(reportOf(form(other)).plant).toBe('Arundo donax');
    expect(mailOf({ ...form(other), key: undefined }).body).toContain('Arundo donax');
  });

  test('has words for every photograph in both languages, and asks for no digging and nothing broken', () => {
    for (const { own } of Object.values(WORDS))
      for (const kind of PHOTOS) {
        const { title, how } = own.photo[kind];
        expect(title.length).toBeGreaterThan(5);
        expect(`${title} ${how}`).not.toMatch(/\bdig|\bcut\b|\bpull|\bpick\b|excav|\bcort|arranqu/i);
      }
    expect(WORDS.es.own.photo.leaf).not.toEqual(WORDS.en.own.photo.leaf);
  });
});

describe('what is held back', () => {
  test.each(['en', 'es'] as const)('is neither on paper nor in the mail, in %s', (language) => {
    const find = aFind({ consent: held }, 'giant-reed', language);
    const { subject, body, short } = mail(find, language);
    for (const text of [JSON.stringify(reportOf(form(find, language))), subject, body, short]) {
      expect(text).not.toMatch(/30\.26120|98\.87210|Beispiel|555-0142|ana@|low crossing|dog is kind/);
    }
    expect(body).toContain(WORDS[language].own.coarse);
    expect(mail(aFind()).body).toContain('30.26120, -98.87210');
  });
});

describe('what was written', () => {
  test('cannot be disguised by signs that turn the direction of writing', () => {
    const text = JSON.stringify(reportOf(form(aFind({ remarks: 'safe\u202eevil\u0007\u2066' }))));
    expect(text).toContain('safeevil');
    expect(text).not.toMatch(/\\u0007|[\u202e\u2066]/);
  });
});

describe('the mail', () => {
  test('has everything in its text: each answer, each plant, the place and who reports it', () => {
    const find = aFind();
    const { subject, body } = mail(find);
    expect(subject).toContain('Arundo donax');
    expect(subject).not.toMatch(/[\r\n]/);
    for (const { label, words } of find.trail) {
      expect(body).toContain(label);
      expect(body).toContain(words);
    }
    for (const { name } of find.standing) expect(body).toContain(name);
    for (const one of [
      '555-0142',
      'ana@example.org',
      find.id,
      find.key.version,
      'Mowed in spring',
      'take' /* the cautions */,
    ])
      expect(body.toLowerCase()).toContain(one.toLowerCase());
  });

  test('opens with all of a short text, spaces and line breaks as RFC 6068 has them', () => {
    const { url, whole } = mailto('help@example.org', { subject: 'A & b?', body: 'one\ntwo = ñ', short: '' });
    expect(whole).toBe(true);
    expect(url).toBe('mailto:help@example.org?subject=A%20%26%20b%3F&body=one%0D%0Atwo%20%3D%20%C3%B1');
    const read = new URL(url);
    expect([read.pathname, read.searchParams.get('body')]).toEqual(['help@example.org', 'one\r\ntwo = ñ']);
  });

  test('that would be too long opens with a short text that says which file to attach, never cut', () => {
    const find = aFind();
    const full = mail(find);
    const { url, whole } = mailto('help@example.org', full);
    expect(whole).toBe(false);
    expect(url.length).toBeLessThanOrEqual(MOST_ADDRESS);
    expect(new URL(url).searchParams.get('body')?.replaceAll('\r\n', '\n')).toBe(full.short);
    expect(full.short).toContain('find-3f0d6c5e.json');
    const long = mailto('help@example.org', { ...full, short: 'ñ'.repeat(500) });
    expect([long.whole, new URL(long.url).searchParams.has('body')]).toEqual([false, false]);
  });

  test('goes to one address, whatever stands in it, and holds every text there is', () => {
    expect(mailto('a@example.org?bcc=b@example.org', { subject: 's', body: 'b', short: 'b' }).url).toBe(
      'mailto:a@example.org%3Fbcc%3Db@example.org?subject=s&body=b',
    );
    fc.assert(
      fc.property(findArbitrary, fc.constantFrom('en' as const, 'es' as const), (find, language) => {
        const { url, whole } = mailto('help@example.org', mail(find, language));
        expect(url.length <= MOST_ADDRESS || !whole).toBe(true);
        expect([...new URL(url).searchParams.keys()].every((name) => ['subject', 'body'].includes(name))).toBe(true);
      }),
    );
    expect(() => mailto('a@example.org', { subject: '\ud800', body: '', short: '' })).not.toThrow();
  });
});
