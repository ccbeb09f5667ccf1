import { describe, expect, test } from 'vitest';
import { native, specOf, yesNo } from '../../../tests/support/build.ts';
import { natureOf, person, RULES, setupOf } from '../../../tests/support/natures.ts';
import { GainTable } from '../gain.ts';
import { compileMatrix, type Matrix } from '../matrix.ts';
import { Book } from './book.ts';
import { coupletWay, type WayCouplet } from './couplets.ts';
import { figuresOf } from './figures.ts';
import { NOTHING } from './plants.ts';
import { runPlant } from './run.ts';
import { Trial } from './trial.ts';
import { without } from './without.ts';

const LEAF = 0;
const STEM = 1;
const SAP = 2;
const TAXA = ['ash', 'box', 'cane', 'dock'].map((id) => native(id));
const spec = specOf(TAXA, [yesNo('leaf', [0, 0, 1, 1]), yesNo('stem', [0, 1, 0, 1]), yesNo('sap', [0, 1, 1, 0])]);
const two = (character: number, one: WayCouplet[number]['to'], other: WayCouplet[number]['to']): WayCouplet => [
  { character, states: [0], to: one },
  { character, states: [1], to: other },
];
const KEY: WayCouplet[] = [two(LEAF, 1, 2), two(STEM, ['ash'], ['box']), two(STEM, ['cane'], ['dock'])];

const bookOf = (matrix: Matrix) => new Book(matrix, new GainTable(matrix), RULES, 1);
/** What is asked, in order, of somebody who says this of leaf, stem and sap, to the end. */
const asked = (couplets: readonly WayCouplet[], said: readonly number[], matrix = compileMatrix(spec)) =>
  runPlant(bookOf(matrix), coupletWay(couplets), 6, said, () => false).asked;

describe('through the couplets', () => {
  test('one question for each couplet on the way, and then what is still worth asking', () => {
    expect(asked(KEY, [0, 1, 1])).toEqual([LEAF, STEM, SAP]);
  });

  test('a lead is answered with its states, and a narrower one later takes the place of the wider', () => {
    const walk = coupletWay([
      [
        { character: 0, states: [0, 1], to: 1 },
        { character: 0, states: [2], to: ['box'] },
      ],
      [
        { character: 0, states: [0], to: ['ash'] },
        { character: 0, states: [1], to: ['cane'] },
      ],
    ]).begin(bookOf(compileMatrix(spec)));
    const { start: from } = bookOf(compileMatrix(spec));
    const now = { from, verdict: {} as never, asked: new Set<number>(), month: 6 };
    expect(walk.next(now)).toBe(0);
    expect(walk.heard(0, 1)).toEqual({ character: 0, states: [0, 1], sureness: 'sure' });
    expect(walk.next(now)).toBe(0);
    expect(walk.heard(0, 1)).toEqual({ character: 0, states: [1], sureness: 'sure' });
  });

  test('what cannot be told is not asked twice, and the way goes on where most of the weight is', () => {
    const heavy = specOf([native('ash'), native('box'), native('cane', 5), native('dock', 5)], spec.characters);
    const key = [
      two(LEAF, 1, 2),
      two(SAP, ['ash'], ['box']),
      two(STEM, 3, 4),
      two(LEAF, ['box'], ['cane']),
      two(LEAF, ['ash'], ['dock']),
    ];
    expect(asked(key, [NOTHING, 1, NOTHING], compileMatrix(heavy)).slice(0, 2)).toEqual([LEAF, STEM]);
    expect(asked(key, [NOTHING, 1, NOTHING], compileMatrix(heavy)).filter((c) => c === LEAF)).toHaveLength(1);
  });

  test('whoever went wrong carries on from where the weight is', () => {
    // Two more characters of ash say that the first couplet was misread. Bark is asked on its side alone.
    const more = specOf(TAXA, [
      yesNo('leaf', [0, 0, 1, 1]),
      yesNo('stem', [0, 1, 0, 1]),
      yesNo('sap', [0, 0, 1, 1]),
      yesNo('smell', [0, 0, 1, 1]),
      yesNo('bark', [0, 1, 0, 1]),
    ]);
    const BARK = 4;
    const key = [
      two(LEAF, 1, 2),
      two(BARK, ['ash'], ['box']),
      two(SAP, 3, 3),
      two(3, 4, 4),
      two(STEM, ['cane'], ['dock']),
    ];
    const matrix = compileMatrix(more);
    expect(asked(key, [1, 0, 0, 0, 0], matrix).slice(0, 4)).toEqual([LEAF, SAP, 3, BARK]);
    expect(asked(key, [1, 0, 1, 1, 0], matrix).slice(0, 4)).toEqual([LEAF, SAP, 3, STEM]);
  });

  test('couplets of words alone are left open, and nothing is asked at them', () => {
    const words: WayCouplet = [
      { states: [], to: 1 },
      { states: [], to: 2 },
    ];
    expect(asked([words, ...KEY.slice(1)], [0, 1, 1])[0]).toBe(STEM);
  });

  test('a key that lacks one of its plants is walked all the same', () => {
    expect(asked(KEY, [0, 0, 0], without(compileMatrix(spec), 0)).slice(0, 2)).toEqual([LEAF, STEM]);
  });

  test('people who never slip come out right, and the same seed comes out the same', () => {
    const nature = natureOf(spec);
    const setup = setupOf(nature, { way: coupletWay(KEY) });
    const stretch = { observer: person({ times: 0 }), from: 0, count: 100 };
    const tally = new Trial(setup).play(stretch);
    expect(figuresOf(tally).topOne.share).toBe(1);
    expect(new Trial(setup).play(stretch)).toEqual(tally);
  });
});
