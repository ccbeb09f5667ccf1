import { describe, expect, test } from 'vitest';
import { EngineError } from '../spec.ts';
import { checkWritten, completed, type KeyProblem, type WrittenCouplet } from './index.ts';

const even = (states: number) =>
  Array.from({ length: states }, (_, a) => Array.from({ length: states }, (_, b) => (a === b ? 0 : 1 / (states - 1))));

const character = (index: number, shares: readonly (readonly number[])[], unknown: readonly number[] = []) => ({
  character: index,
  states: 2,
  ordered: false,
  leads: 'two' as const,
  cost: 1,
  misread: 0,
  confused: even(2),
  shares,
  unknown: new Set(unknown),
});

/** Reed and cane are hollow, taro and arum are not; reed and taro are tall; cane may be either, mostly tall. */
const of: KeyProblem = {
  taxa: [{ weight: 1 }, { weight: 2 }, { weight: 1 }, { weight: 1 }],
  characters: [
    character(0, [
      [1, 0],
      [1, 0],
      [0, 1],
      [0, 1],
    ]),
    character(1, [
      [1, 0],
      [0.5, 0.5],
      [1, 0],
      [0, 1],
    ]),
    character(2, [
      [1, 0],
      [0, 1],
      [0, 1],
      [0, 1],
    ]),
  ],
  price: 0,
  naming: 0,
  least: 0,
  everySplit: 6,
};
const [REED, CANE, TARO, ARUM] = [0, 1, 2, 3] as const;
const good: readonly WrittenCouplet[] = [
  {
    number: 1,
    leads: [
      { character: 0, states: [0], to: { couplet: 2 } },
      { character: 0, states: [1], to: { couplet: 3 } },
    ],
  },
  {
    number: 2,
    leads: [
      { character: 2, states: [0], to: { taxa: [REED] } },
      { character: 2, states: [1], to: { taxa: [CANE] } },
    ],
  },
  {
    number: 3,
    leads: [
      { character: 1, states: [0], to: { taxa: [TARO] } },
      { character: 1, states: [1], to: { taxa: [ARUM] } },
    ],
  },
];
const faults = (couplets: readonly WrittenCouplet[]) => checkWritten(of, couplets).faults;
const with_ = (couplet: number, changed: WrittenCouplet) => good.map((one, k) => (k === couplet ? changed : one));

describe('written couplets', () => {
  test('a sound key has no fault', () => {
    expect(faults(good)).toEqual([]);
  });

  test('a taxon named below a lead that it contradicts is told, and is not reached', () => {
    const wrong = with_(1, {
      number: 2,
      leads: [
        { character: 2, states: [0], to: { taxa: [REED] } },
        { character: 2, states: [1], to: { taxa: [CANE, TARO] } },
      ],
    });
    expect(faults(wrong)).toEqual([{ kind: 'contradicts', couplet: 0, lead: 0, taxon: TARO }]);
  });

  test('a state that a taxon shows too seldom to count contradicts nothing', () => {
    const [first, ...rest] = of.characters;
    const seldom = {
      ...of,
      characters: [
        { ...(first as (typeof of.characters)[0]), strays: [undefined, undefined, [0.1, 0], undefined] },
        ...rest,
      ],
    };
    const wrong = with_(1, {
      number: 2,
      leads: [
        { character: 2, states: [0], to: { taxa: [REED] } },
        { character: 2, states: [1], to: { taxa: [CANE, TARO] } },
      ],
    });
    expect(checkWritten(seldom, wrong).faults).toEqual([]);
  });

  test('a taxon that no lead names, or that never gets to where it is named, is told', () => {
    expect(
      faults(
        with_(2, {
          number: 3,
          leads: [
            { character: 1, states: [0], to: { taxa: [TARO] } },
            { character: 1, states: [1], to: { taxa: [TARO] } },
          ],
        }),
      ),
    ).toEqual([
      { kind: 'contradicts', couplet: 2, lead: 1, taxon: TARO },
      { kind: 'not-named', taxon: ARUM },
    ]);
    const swapped = with_(2, {
      number: 3,
      leads: [
        { character: 1, states: [0], to: { taxa: [ARUM] } },
        { character: 1, states: [1], to: { taxa: [TARO] } },
      ],
    });
    expect(faults(swapped)).toEqual(
      expect.arrayContaining([
        { kind: 'unreached', taxon: TARO },
        { kind: 'unreached', taxon: ARUM },
      ]),
    );
  });

  test('a couplet that separates nothing is told, also when an earlier one has settled it', () => {
    const twice = with_(1, {
      number: 2,
      leads: [
        { character: 0, states: [0], to: { taxa: [REED, CANE] } },
        { character: 0, states: [1], to: { taxa: [CANE] } },
      ],
    });
    expect(faults(twice)).toContainEqual({ kind: 'contradicts', couplet: 1, lead: 1, taxon: CANE });
    const vague = with_(1, {
      number: 2,
      leads: [{ to: { taxa: [REED, CANE] } }, { to: { taxa: [REED, CANE] } }],
    });
    expect(faults(vague)).toEqual([{ kind: 'separates-nothing', couplet: 1 }]);
  });

  test('plants that fit no lead are told', () => {
    const gap = with_(2, {
      number: 3,
      leads: [
        { character: 1, states: [0], to: { taxa: [TARO] } },
        { character: 2, states: [0], to: { taxa: [ARUM] } },
      ],
    });
    expect(faults(gap)).toContainEqual({ kind: 'fits-no-lead', couplet: 2, taxon: ARUM });
  });

  test('numbers that lead nowhere, back, twice or from nowhere are told with their place', () => {
    expect(faults(with_(0, { number: 1, leads: [{ to: { couplet: 2 } }, { to: { couplet: 9 } }] }))).toEqual(
      expect.arrayContaining([
        { kind: 'dangling', couplet: 0, lead: 1 },
        { kind: 'unreached-couplet', couplet: 2 },
      ]),
    );
    expect(
      faults(with_(1, { number: 2, leads: [{ to: { couplet: 1 } }, { to: { taxa: [REED, CANE] } }] })),
    ).toContainEqual({
      kind: 'cycle',
      couplet: 1,
      lead: 0,
    });
    expect(faults([...good, { number: 2, leads: [] }])).toContainEqual({ kind: 'same-number', couplet: 3 });
  });

  test('ways that part and meet again a hundred times are walked once', () => {
    const ladder: WrittenCouplet[] = Array.from({ length: 100 }, (_, k) => ({
      number: k + 1,
      leads: [{ to: { couplet: k + 2 } }, { to: { couplet: k + 2 } }],
    }));
    const end: WrittenCouplet = {
      number: 101,
      leads: [{ to: { taxa: [REED, CANE] } }, { to: { taxa: [TARO, ARUM] } }],
    };
    expect(faults([...ladder, end]).filter(({ kind }) => kind === 'separates-nothing')).toHaveLength(100);
  });
});

describe('a written top with the rest built', () => {
  const top: readonly WrittenCouplet[] = [
    {
      number: 4,
      leads: [
        { character: 0, states: [0], to: 'build' },
        { character: 0, states: [1], to: { couplet: 7 } },
      ],
    },
    {
      number: 7,
      leads: [
        { character: 1, states: [0], to: { taxa: [TARO] } },
        { character: 1, states: [1], to: 'build' },
      ],
    },
  ];

  test('what is built goes on from the lead, for those who get there, numbered behind what is written', () => {
    const [below, end] = completed(of, top);
    expect(below).toMatchObject({ couplet: 0, lead: 0, to: 8 });
    expect(below?.couplets).toMatchObject([
      {
        number: 8,
        from: 4,
        taxa: [REED, CANE],
        leads: [
          { character: 2, to: [REED] },
          { character: 2, to: [CANE] },
        ],
      },
    ]);
    expect(end).toMatchObject({ couplet: 1, lead: 1, to: [ARUM], couplets: [] });
  });

  test('a taxon that may follow several leads is built for below each, with the plants that go there', () => {
    const byHeight: readonly WrittenCouplet[] = [
      {
        number: 1,
        leads: [
          { character: 1, states: [0], to: 'build' },
          { character: 1, states: [1], to: 'build' },
        ],
      },
    ];
    const weights = completed(of, byHeight).map(({ key }) => key.root.taxa.map(({ weight }) => weight));
    expect(weights).toEqual([
      [1, 1, 1],
      [1, 1],
    ]);
  });

  test('nothing is built on couplets that go in a circle or nowhere', () => {
    expect(() => completed(of, [{ number: 1, leads: [{ to: { couplet: 1 } }, { to: 'build' }] }])).toThrow(EngineError);
  });
});
