import { describe, expect, test } from 'vitest';
import { type Edit, edited, smallKey } from '../../tests/support/small-key.ts';
import { type CheckOptions, checkKey } from './check.ts';
import { readKey } from './folder.ts';
import type { Problem } from './problem.ts';
import type { Key, Taxon } from './types.ts';

/** The warnings of one kind about the small key, edited. */
function warnings(code: string, edits: readonly Edit[] = [], options: CheckOptions = {}): readonly Problem[] {
  const problems = checkKey(readKey(edited(...edits)), options);
  expect(problems.every(({ severity }) => severity === 'warning')).toBe(true);
  return problems.filter((one) => one.code === code);
}

const told = (problems: readonly Problem[]) =>
  problems.map(({ file, path, expected, found }) => ({ file, path, expected, found }));

test('a key from readKey has no errors', () => {
  expect(checkKey(readKey(smallKey())).filter(({ severity }) => severity === 'error')).toEqual([]);
});

test('a key made in another way has those that readKey would tell, before the warnings', () => {
  const key = readKey(smallKey());
  const [first, ...others] = key.taxa;
  const broken = {
    ...key,
    taxa: [{ ...first, statusSource: [] }, ...others],
    lookalikes: key.lookalikes.map((pair) => ({ ...pair, separate: [] })),
  } as Key;
  const errors = checkKey(broken).filter(({ severity }) => severity === 'error');
  expect(errors.map(({ code, path }) => [code, path])).toEqual([
    ['no-source', 'taxa[0].statusSource'],
    ['needs', 'lookalikes[0].separate'],
    ['needs', 'lookalikes[1].separate'],
  ]);
  expect(checkKey(broken).slice(0, 3)).toEqual(errors);
});

describe('pairs that no character separates', () => {
  const alike: readonly Edit[] = [
    ['taxa.json', 'taxa[2].traits.leaf-width.range', '2-7 cm'],
    ['taxa.json', 'taxa[2].traits.height.range', '(6-)11-12 m'],
  ];

  test('are told with what almost does', () => {
    expect(told(warnings('not-separated', alike))).toEqual([
      {
        file: 'taxa.json',
        path: 'taxa[2]',
        expected: 'a character that tells Arundinaria gigantea (native) from Arundo donax (invasive)',
        found: 'none of the 4 known of both; 1 almost (height)',
      },
    ]);
  });

  test('are none in the small key', () => {
    expect(warnings('not-separated')).toEqual([]);
  });

  test('come with the pairs of an invasive and a native plant first, and the last are only counted', () => {
    const taxa = Array.from({ length: 13 }, (_, i) => ({
      id: `taxon-${i}`,
      name: `Taxon ${i}`,
      family: 'Poaceae',
      status: i === 12 ? 'invasive' : 'native',
      statusSource: ['memory'],
      abundance: 'common',
      common: { en: [`name ${i}`] },
      traits: {},
    }));
    const edits: Edit[] = [
      ['taxa.json', 'taxa', taxa],
      ['taxa.json', 'lookalikes', []],
    ];
    const files = edited(...edits).set('guidance.json', '{"entries": []}');
    files.delete('couplets.json');
    const pairs = checkKey(readKey(files)).filter(({ code }) => code === 'not-separated');
    expect(pairs).toHaveLength(61);
    expect(pairs.slice(0, 12).every(({ expected }) => expected.includes('Taxon 12 (invasive)'))).toBe(true);
    expect(pairs[12]?.expected).not.toContain('invasive');
    // 13 taxa make 78 pairs.
    expect(pairs[60]?.found).toBe('18 more pairs that none does');
    expect(pairs[0]?.found).toBe('none of the 0 known of both; none even almost');
  });
});

test('pairs by the million are counted, and one of an invasive and a native plant is not lost among them', () => {
  const key = readKey(smallKey());
  const native = key.taxa.find(({ status }) => status === 'native') as Taxon;
  const invasive = key.taxa.find(({ status }) => status === 'invasive') as Taxon;
  const nothing: Taxon['traits'] = new Map();
  const taxa = [...new Array(3000).fill(native), invasive].map((one: Taxon, i) => ({
    ...one,
    id: `t${i}`,
    traits: nothing,
  }));
  const pairs = checkKey({ ...key, taxa, lookalikes: [] }).filter(({ code }) => code === 'not-separated');
  expect(pairs).toHaveLength(61);
  expect(pairs[0]?.expected).toContain('(invasive)');
  expect(pairs[60]?.found).toBe(`${(3001 * 3000) / 2 - 60} more pairs that none does`);
});

describe('thin knowledge', () => {
  test('a taxon with few of the characters that apply to it', () => {
    expect(
      told(
        warnings('thin-taxon', [
          ['taxa.json', 'taxa[1].traits', { habitat: { usually: ['waterline'], source: ['memory'] } }],
        ]),
      ),
    ).toEqual([
      {
        file: 'taxa.json',
        path: 'taxa[1].traits',
        expected: 'at least 50 % of the characters that apply to Phragmites australis subsp. americanus',
        found: '1 of 6; unknown are growth-form, height, leaf-width, leaf-base-mark, sheaths',
      },
    ]);
  });

  test('what does not apply is neither known nor unknown', () => {
    const herb: Edit[] = [
      [
        'taxa.json',
        'taxa[1].traits',
        {
          'growth-form': { usually: ['leafy-herb'], source: ['memory'] },
          sheaths: { applies: false, source: ['memory'] },
          height: { range: '1-2 m', source: ['memory'] },
        },
      ],
    ];
    // Of six, sheaths are said not to apply and the leaf base mark is only asked of canes and grasses.
    expect(warnings('thin-taxon', herb, { knownOfTaxon: 0.51 }).map(({ found }) => found)).toEqual([
      '2 of 4; unknown are habitat, leaf-width',
    ]);
    expect(warnings('thin-taxon', herb, { knownOfTaxon: 0.5 })).toEqual([]);
  });

  test('a character that is hardly known', () => {
    expect(warnings('thin-character')).toEqual([]);
    const edits: Edit[] = [['taxa.json', 'taxa[1].traits.sheaths', undefined]];
    expect(told(warnings('thin-character', edits))).toEqual([
      {
        file: 'characters.json',
        path: 'characters[5]',
        expected: 'sheaths known of at least 33 % of the taxa that it applies to',
        found: '0 of 2',
      },
    ]);
    expect(warnings('thin-character', [], { knownOfCharacter: 0.6 }).map(({ path }) => path)).toEqual([
      'characters[5]',
    ]);
  });

  test('traits from memory, as a share of those that apply', () => {
    expect(told(warnings('from-memory'))).toEqual([
      {
        file: 'taxa.json',
        path: 'taxa',
        expected: 'traits that were read in a source',
        found: '1 of 13 from memory alone (8 %)',
      },
    ]);
  });
});

describe('look-alikes', () => {
  test('of an invasive plant, none of them native', () => {
    expect(warnings('no-native-lookalike')).toEqual([]);
    const edits: Edit[] = [['taxa.json', 'lookalikes', []]];
    expect(told(warnings('no-native-lookalike', edits))).toEqual([
      {
        file: 'taxa.json',
        path: 'taxa[0]',
        expected: 'a native look-alike of Arundo donax, an invasive plant',
        found: 'none',
      },
    ]);
    const others: Edit[] = [
      ['taxa.json', 'taxa[1].status', 'introduced'],
      ['taxa.json', 'taxa[2].status', 'introduced'],
    ];
    expect(warnings('no-native-lookalike', others)).toHaveLength(1);
  });

  test.each<[string, Edit, string[]]>([
    [
      'as they stand',
      ['taxa.json', 'taxa[0].misspellings', []],
      ['lookalikes[1].separate[1]: traits that overlap for the most part'],
    ],
    [
      'with a state that both show',
      ['taxa.json', 'taxa[1].traits.leaf-base-mark.rarely', ['brown-wedge']],
      [
        'lookalikes[0].separate[0]: traits that overlap in their exceptions',
        'lookalikes[1].separate[1]: traits that overlap for the most part',
      ],
    ],
    [
      'with a trait that is unknown',
      ['taxa.json', 'taxa[2].traits.height', undefined],
      ['lookalikes[1].separate[1]: nothing to compare: Arundinaria gigantea unknown'],
    ],
    ['with heights that differ in what is usual', ['taxa.json', 'taxa[2].traits.height.range', '1-4 m'], []],
    [
      'with "always" said of what only differs in what is usual',
      ['taxa.json', 'lookalikes[1].separate[1].how', 'always'],
      ['lookalikes[1].separate[1]: traits that overlap for the most part'],
    ],
  ])('whose traits do not differ as they are said to, %s', (_, edit, expected) => {
    expect(warnings('same-states', [edit]).map(({ path, found }) => `${path}: ${found}`)).toEqual(expected);
  });
});

test('an invasive plant without guidance is told, another is not', () => {
  expect(warnings('no-guidance')).toEqual([]);
  expect(told(warnings('no-guidance', [['guidance.json', 'entries', []]]))).toEqual([
    { file: 'guidance.json', path: 'entries', expected: 'an entry for Arundo donax, an invasive plant', found: 'none' },
  ]);
});

test('names of several plants are told with their owners', () => {
  expect(told(warnings('shared-name'))).toEqual([
    {
      file: 'taxa.json',
      path: 'taxa[0].common.en[1]',
      expected: 'a name that only one plant has',
      found: '"giant cane" of Arundo donax (invasive), Arundinaria gigantea (native)',
    },
    {
      file: 'taxa.json',
      path: 'taxa[0].common.es[1]',
      expected: 'a name that only one plant has',
      found: '"carrizo" of Arundo donax (invasive), Phragmites australis subsp. americanus (native)',
    },
  ]);
});

describe('translations', () => {
  test('that are missing are counted, and the first of them told', () => {
    const [sentences, names] = warnings('untranslated');
    expect(sentences).toMatchObject({
      file: 'text/es.json',
      path: 'text',
      expected: 'a translation of each of 50 sentences',
    });
    expect(sentences?.found).toMatch(
      /^45 missing: "An invented creek in the south-central United States" \(key.json region\); .* and 42 more$/,
    );
    expect(names?.found).toBe('1 missing: Arundinaria gigantea');
  });

  test('of a whole language may be missing', () => {
    const files = smallKey();
    files.delete('text/es.json');
    expect(checkKey(readKey(files)).find(({ code }) => code === 'untranslated')?.found).toMatch(/^50 missing/);
  });

  test('that no sentence has any more are told', () => {
    expect(warnings('unused-translation')).toEqual([]);
    const edits: Edit[] = [['characters.json', 'characters[2].label', 'Tallness']];
    expect(told(warnings('unused-translation', edits))).toEqual([
      {
        file: 'text/es.json',
        path: 'text',
        expected: 'translations of sentences that the key has',
        found: '1 of others: "Height"',
      },
    ]);
  });

  test('of notes, which only the keepers read, are neither missed nor unused', () => {
    const edits: Edit[] = [['text/es.json', 'text', { 'Said of the species as a whole.': 'x' }]];
    expect(warnings('unused-translation', edits)).toEqual([]);
    expect(warnings('untranslated', edits)[0]?.expected).toBe('a translation of each of 50 sentences');
  });
});

test('sources that nothing names are told', () => {
  expect(warnings('unused-source')).toEqual([]);
  const spare = { id: 'spare', title: 'x', institution: 'x', kind: 'book' };
  const [memory] = JSON.parse(smallKey().get('sources.json') ?? '').sources.slice(-1);
  const edits: Edit[] = [
    ['sources.json', 'sources[4]', spare],
    ['sources.json', 'sources[5]', { ...memory, id: 'other' }],
  ];
  expect(told(warnings('unused-source', edits))).toEqual([
    {
      file: 'sources.json',
      path: 'sources',
      expected: 'sources that another file names',
      found: '2 that none does: spare, other',
    },
  ]);
});

describe('reviews', () => {
  test.each<[CheckOptions, string[]]>([
    [{}, []],
    [{ today: '2026-11-25' }, []],
    [{ today: '2027-11-25' }, []],
    [{ today: '2027-11-26' }, ['reviewed', 'entries[0].reviewed', 'entries[1].reviewed']],
    [{ today: '2027-01-25', reviewMonths: 2 }, []],
    [{ today: '2027-01-26', reviewMonths: 2 }, ['reviewed', 'entries[0].reviewed', 'entries[1].reviewed']],
  ])('with %j, past their time are %j', (options, paths) => {
    expect(warnings('past-review', [], options).map(({ path }) => path)).toEqual(paths);
  });

  test('are told with the day before which they are too old', () => {
    expect(warnings('past-review', [], { today: '2028-02-29' })[0]).toMatchObject({
      expected: 'a review since 2027-02-29 (12 months before 2028-02-29)',
      found: '2026-11-25',
    });
  });
});

describe('couplets against the traits', () => {
  const places = (code: string, edits: readonly Edit[]) =>
    told(warnings(code, edits)).map(({ path, found }) => [path, found]);

  test('that go with them raise nothing', () => {
    for (const code of ['contradicts', 'unreachable', 'separates-nothing']) expect(warnings(code)).toEqual([]);
  });

  test('a lead that contradicts a taxon below it is told at the lead', () => {
    const edits: Edit[] = [['couplets.json', 'couplets[0].leads[0].states', ['no-wedge']]];
    expect(told(warnings('contradicts', edits))).toEqual([
      {
        file: 'couplets.json',
        path: 'couplets[0].leads[0]',
        expected: 'below this lead of couplet 1 only taxa that may show leaf-base-mark no-wedge',
        found: 'Arundo donax, which by the traits never do',
      },
    ]);
  });

  test('a taxon that no lead names, and one that is turned away on every way to it', () => {
    const unnamed: Edit[] = [['couplets.json', 'couplets[0].leads[0].to', 'arundinaria-gigantea']];
    expect(places('unreachable', unnamed)).toContainEqual(['couplets', 'none for Arundo donax']);
    const turned: Edit[] = [['couplets.json', 'couplets[0].leads[0].states', ['no-wedge']]];
    expect(places('unreachable', turned).map(([path]) => path)).toContain('couplets');
  });

  test('a couplet that separates nothing', () => {
    const edits: Edit[] = [
      ['couplets.json', 'couplets[0].leads[0].states', ['brown-wedge', 'no-wedge']],
      ['couplets.json', 'couplets[0].leads[1].states', ['brown-wedge', 'no-wedge']],
    ];
    expect(places('separates-nothing', edits)).toEqual([['couplets[0]', 'every taxon may follow every lead']]);
  });

  test('a couplet that no lead goes on to', () => {
    const edits: Edit[] = [['couplets.json', 'couplets[0].leads[1].to', 'arundinaria-gigantea']];
    expect(places('unreachable', edits)).toContainEqual(['couplets[1]', 'none']);
  });

  test('leads that part and meet again sixty times are followed once', () => {
    const couplets = Array.from({ length: 60 }, (_, i) => ({
      number: i + 1,
      leads: ['one', 'other'].map((text) => ({ text, to: i === 59 ? 'arundo-donax' : i + 2 })),
    }));
    expect(places('unreachable', [['couplets.json', 'couplets', couplets]])).toContainEqual([
      'couplets',
      'none for Phragmites australis subsp. americanus, Arundinaria gigantea',
    ]);
  });
});

test('couplets that go in a circle are no key, and the lead that closes it is named', () => {
  const files = edited(['couplets.json', 'couplets[1].leads[0].to', 1]);
  expect(() => readKey(files)).toThrow(/couplets\.json line \d+, couplets\[1\]\.leads\[0\]\.to: expected .*, found 1/);
});
