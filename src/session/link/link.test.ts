import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { streambank } from '../../../tests/support/streambank.ts';
import type { KeyAnswer, Month } from '../../key/index.ts';
import { SessionStore } from '../index.ts';
import { restoreTrail } from '../restore.ts';
import { LinkError, readLink, writeLink } from './index.ts';

const prepared = streambank();
const { key } = prepared;

const sureness = fc.constantFrom('sure' as const, 'think' as const, 'guess' as const);
const answerOf = (character: (typeof key.characters)[number]): fc.Arbitrary<KeyAnswer> => {
  const states = fc
    .subarray(
      character.states.map(({ id }) => id),
      { minLength: 1 },
    )
    .chain((ids) => sureness.map((sure): KeyAnswer => ({ character: character.id, states: ids, sureness: sure })));
  const skipped = fc.constant<KeyAnswer>({ character: character.id, skipped: true });
  if (character.kind !== 'measure') return fc.oneof(states, skipped);
  const unit =
    character.unit === 'count' ? fc.constant('count' as const) : fc.constantFrom('mm', 'cm', 'm', 'in', 'ft');
  const typed = fc
    .tuple(fc.double({ min: 1e-9, max: 1e6, noNaN: true }), unit, sureness)
    .map(([value, of, sure]): KeyAnswer => ({ character: character.id, value, unit: of, sureness: sure }));
  return fc.oneof(states, skipped, typed);
};
const trail = fc
  .shuffledSubarray([...key.characters])
  .chain((characters) => fc.tuple(...characters.map(answerOf)) as fc.Arbitrary<KeyAnswer[]>);
const month = fc.integer({ min: 1, max: 12 }) as fc.Arbitrary<Month>;
const way = fc.constantFrom('couplets' as const, 'free' as const);
const observer = fc.constantFrom(...key.observers.keys());
const turns = fc.array(
  fc.record(
    { couplet: fc.integer({ min: 1, max: 60 }), lead: fc.integer({ min: 0, max: 1 }) },
    { requiredKeys: ['couplet'] },
  ),
  { maxLength: 5 },
);
const told = fc.record({ prepared: fc.constant(prepared), month, observer, way, trail, turns });

describe('a link', () => {
  test('carries any trail there and back, in signs that no address escapes', () => {
    fc.assert(
      fc.property(told, fc.constantFrom('en', 'es', 'es-MX', 'zh-Hant-TW'), (one, language) => {
        const text = writeLink(one, language);
        const read = readLink(new URLSearchParams(`plant=${text.replaceAll('+', '%2B')}`).get('plant') ?? '');
        expect(read).toMatchObject({ key: key.id, version: key.version, language, month: one.month, way: one.way });
        expect(read.answers).toEqual(one.trail);
        expect(read.turns).toEqual(one.turns);
        const address = new URL('https://example.org/');
        address.searchParams.set('plant', text);
        expect(decodeURIComponent(address.search)).toBe(`?plant=${text}`);
      }),
      { numRuns: 200 },
    );
  });

  test('opens the session that it was made of', () => {
    const store = new SessionStore(prepared, { month: 7 });
    const { question, asked } = store.snapshot;
    const character = asked?.fork.character ?? question?.character ?? '';
    const [state] = key.characters.find(({ id }) => id === character)?.states ?? [];
    store.request('answer', { answer: { character, states: [state?.id ?? ''], sureness: 'think' } });
    const { start, left } = restoreTrail(prepared, readLink(writeLink(store.snapshot, 'es')));
    expect(left).toEqual([]);
    expect(new SessionStore(prepared, start).snapshot.identification).toEqual(store.snapshot.identification);
  });

  test('of an older key opens as far as the key still knows the answers, and says which it left', () => {
    const text = writeLink(
      {
        prepared: { ...prepared, key: { ...key, version: '0.0.1' } },
        month: 5,
        observer: [...key.observers.keys()][0] as string,
        way: 'couplets',
        trail: [
          { character: 'gone', states: ['away'], sureness: 'sure' },
          { character: key.characters[0]?.id ?? '', skipped: true },
        ],
        turns: [{ couplet: 1, lead: 0 }],
      },
      'en',
    );
    const { start, left } = restoreTrail(prepared, readLink(text));
    expect(start.trail).toEqual([{ character: key.characters[0]?.id, skipped: true }]);
    expect(start.turns).toEqual([]);
    expect(left).toEqual([{ character: 'gone', states: ['away'], sureness: 'sure' }]);
  });

  test.each([
    ['', 'form'],
    ['2_streambank_1.0.0_en_7_novice_c_', 'form'],
    ['1_Stream bank_1.0.0_en_7_novice_c_', 'key'],
    ['1_streambank_.._en_7_novice_c_', 'version'],
    ['1_streambank_1.0.0_<b>_7_novice_c_', 'language'],
    ['1_streambank_1.0.0_en_13_novice_c_', 'month'],
    ['1_streambank_1.0.0_en_7__c_', 'observer'],
    ['1_streambank_1.0.0_en_7_novice_z_', 'way'],
    ['1_streambank_1.0.0_en_7_novice_c_3-1.x', 'turns[1]'],
    ['1_streambank_1.0.0_en_7_novice_c__leaf-shape.s', 'answers[0]'],
    ['1_streambank_1.0.0_en_7_novice_c__leaf-shape.q.arrow', 'answers[0]'],
    ['1_streambank_1.0.0_en_7_novice_c__leaf-shape.x_width.S.cm.ten', 'answers[1]'],
    [`1_streambank_1.0.0_en_7_novice_c_${'_a.x'.repeat(401)}`, 'answers'],
    ['x'.repeat(8001), '(link)'],
  ])('that reads %j is refused at %s', (text, path) => {
    expect(() => readLink(text)).toThrow(expect.objectContaining({ name: 'LinkError', path }));
  });

  test('cut or changed anywhere is read, or refused by name: nothing else happens', () => {
    fc.assert(
      fc.property(told, fc.nat(), fc.nat(), fc.string({ maxLength: 3 }), (one, at, end, put) => {
        const text = writeLink(one, 'en');
        const cut = at % (text.length + 1);
        const changed = text.slice(0, cut) + put + text.slice(Math.max(cut, end % (text.length + 1)));
        try {
          const { start } = restoreTrail(prepared, readLink(changed));
          expect(() => new SessionStore(prepared, start)).not.toThrow();
        } catch (error) {
          expect(error).toBeInstanceOf(LinkError);
        }
      }),
      { numRuns: 200 },
    );
  });
});
