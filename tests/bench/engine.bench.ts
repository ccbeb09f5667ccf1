// The engine beside numpy and beside the machine's own speed of copying.
import { mkdirSync, writeFileSync } from 'node:fs';
import { type Bench, digits, type Time, type Tools, table } from './bench.ts';
import type { InAKey, Measured, Work } from './engine.work.ts';
import { MISREAD, type Synthetic, synthetic } from './synthetic.ts';

/** Taxa and characters; the second is about the size of a key for one region. */
const SIZES = [
  [100, 40],
  [85, 40],
  [1_000, 100],
  [10_000, 200],
] as const;
/** Numpy, Node and Chromium take turns this many times, so that a busy minute does not fall to one of them alone. */
const ROUNDS = 2;
/** How far numpy's answers and the engine's may lie apart: probabilities, and bits. */
const AGREE = 1e-9;

interface Yardstick {
  readonly python: string;
  readonly numpy: string;
  readonly blas: string;
  /** Bytes read and written for each second. */
  readonly bandwidth: number;
  readonly sizes: readonly {
    readonly double: Work;
    readonly single: Work;
    readonly p: readonly number[];
    readonly bits: readonly number[];
  }[];
}

interface Round {
  readonly numpy: Yardstick | undefined;
  readonly node: readonly Measured[];
  readonly chromium: readonly Measured[] | undefined;
}

/** Of the largest matrix with sizes among its characters, in Node and in Chromium. */
type WithSizes = readonly [InAKey, InAKey | undefined];

export default { title: 'Engine', report } satisfies Bench;

async function report(tools: Tools): Promise<string> {
  const made = SIZES.map(([T, C]) => synthetic(T, C));
  const bases = tools.inPython ? made.map((one) => write(tools.folder, one)) : [];
  const rounds: Round[] = [];
  for (let round = 1; round <= ROUNDS; round++) {
    const numpy = await timed(tools, `numpy, round ${round}`, () =>
      tools.inPython?.<Yardstick>('yardstick.py', 'time', ...bases),
    );
    const everySize = async (run: Tools['inNode']) => {
      const all: Measured[] = [];
      for (const [T, C] of SIZES) all.push(await run<Measured>('engine', 'measure', T, C));
      return all;
    };
    const node = await timed(tools, `Node, round ${round}`, () => everySize(tools.inNode));
    const { inChromium } = tools;
    const chromium = await timed(tools, `Chromium, round ${round}`, async () => inChromium && everySize(inChromium));
    rounds.push({ numpy, node, chromium });
  }
  tools.say('engine: with sizes');
  const [T, C] = SIZES[SIZES.length - 1] as (typeof SIZES)[number];
  const withSizes: WithSizes = [
    await tools.inNode<InAKey>('engine', 'measureWithSizes', T, C),
    await tools.inChromium?.<InAKey>('engine', 'measureWithSizes', T, C),
  ];
  const bandwidth = Math.max(
    await tools.inNode<number>('copy', 'bandwidth'),
    ...rounds.map((r) => r.numpy?.bandwidth ?? 0),
  );
  return [
    comparison(rounds),
    agreement(rounds),
    inAKey(rounds, withSizes, bandwidth),
    notes(made, rounds, bandwidth),
  ].join('\n\n');
}

async function timed<T>(tools: Tools, what: string, run: () => T | Promise<T>): Promise<T> {
  tools.say(`engine: ${what}`);
  return await run();
}

/** Writes the cells for numpy to read, as bytes and doubles. */
function write(folder: string, made: Synthetic): string {
  const { first, second, share, ...rest } = made;
  const base = `${folder}/${made.taxa}x${made.characters}`;
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${base}.first.i8`, first);
  writeFileSync(`${base}.second.i8`, second);
  writeFileSync(`${base}.share.f64`, share);
  writeFileSync(`${base}.json`, JSON.stringify({ ...rest, misread: MISREAD }));
  return base;
}

const name = (size: number) => {
  const [T, C] = SIZES[size] as (typeof SIZES)[number];
  return `${T.toLocaleString('en')} x ${C}`;
};

/** The least of all rounds, in milliseconds; undefined where one engine was not there. */
function best(rounds: readonly Round[], of: (round: Round) => Time | undefined): number | undefined {
  const all = rounds.map(of).filter((one) => one !== undefined);
  return all.length > 0 ? Math.min(...all.map((one) => one.best)) : undefined;
}

function least(all: readonly (InAKey | undefined)[]): InAKey | undefined {
  const there = all.filter((one) => one !== undefined);
  const [first] = there;
  if (first === undefined) return undefined;
  const quickest = (part: 'both' | 'turn') => there.map((one) => one[part]).sort((a, b) => a.best - b.best)[0] as Time;
  return { both: quickest('both'), turn: quickest('turn'), compile: Math.min(...there.map((one) => one.compile)) };
}

const ms = (x: number | undefined) => (x === undefined ? 'not run' : digits(x));
const ratio = (x: number | undefined, to: number | undefined) =>
  x === undefined || to === undefined ? 'not run' : digits(x / to);

function comparison(rounds: readonly Round[]): string {
  const rows = SIZES.flatMap((_, size) =>
    (['posterior', 'gains', 'both'] as const).map((part) => {
      const double = best(rounds, (r) => r.numpy?.sizes[size]?.double[part]);
      const single = best(rounds, (r) => r.numpy?.sizes[size]?.single[part]);
      const node = best(rounds, (r) => r.node[size]?.oneRate[part]);
      const chromium = best(rounds, (r) => r.chromium?.[size]?.oneRate[part]);
      const times = [double, single, node, chromium].map(ms);
      const ratios = [ratio(node, double), ratio(chromium, double), ratio(node, single), ratio(chromium, single)];
      return [name(size), part === 'both' ? '**both**' : part, ...times, ...ratios];
    }),
  );
  const head = [
    'taxa x characters',
    'work',
    'numpy, 64 bits',
    'numpy, 32 bits',
    'Node',
    'Chromium',
    'Node / numpy 64',
    'Chromium / numpy 64',
    'Node / numpy 32',
    'Chromium / numpy 32',
  ];
  return `### The same work as numpy

One rate of slips, no \`not in this key\`: the posterior after ten answers, then what each further character is expected
to tell. Milliseconds, least of all runs; a ratio below 1 means that the engine is faster.

${table(head, rows)}`;
}

/** @throws when the engine and numpy do not agree: then there is nothing to compare. */
function agreement(rounds: readonly Round[]): string {
  const [first] = rounds as [Round];
  const { numpy } = first;
  if (numpy === undefined) return 'numpy was not there, so nothing was compared.';
  const apart = (x: readonly number[], y: readonly number[] = []) => {
    if (x.length !== y.length) throw new Error(`${x.length} values beside ${y.length}`);
    return Math.max(...x.map((one, i) => Math.abs(one - (y[i] as number))));
  };
  const rows = SIZES.map((_, size) => {
    const theirs = numpy.sizes[size] as Yardstick['sizes'][number];
    const engines = [first.node[size], first.chromium?.[size]].filter((one) => one !== undefined);
    const p = Math.max(...engines.map((one) => apart(one.p, theirs.p)));
    const bits = Math.max(...engines.map((one) => apart(one.bits, theirs.bits)));
    // Written so that a NaN is no agreement.
    if (!(p <= AGREE && bits <= AGREE))
      throw new Error(`${name(size)}: the engine and numpy differ by ${p} and ${bits}`);
    return [name(size), p.toExponential(1), bits.toExponential(1)];
  });
  return `Largest difference between numpy's answers (64 bits) and the engine's, in Node or Chromium, over all taxa and all
characters not asked:

${table(['taxa x characters', 'probability', 'bits'], rows)}`;
}

function inAKey(rounds: readonly Round[], withSizes: WithSizes, bandwidth: number): string {
  const row = (title: string, node: InAKey, chromium: InAKey | undefined, pass: string) => [
    title,
    ...[node.both, chromium?.both, node.turn, chromium?.turn].map((one) => ms(one?.best)),
    pass,
    digits(node.compile),
  ];
  const rows = SIZES.map(([T, C], size) => {
    const states = synthetic(1, C).states.reduce((a, b) => a + b, 0);
    const pass = ((states * (T + 1) * 8) / bandwidth) * 1e3;
    const node = least(rounds.map((r) => r.node[size]?.inAKey));
    const chromium = least(rounds.map((r) => r.chromium?.[size]?.inAKey));
    return row(name(size), node as InAKey, chromium, digits(pass));
  });
  rows.push(row(`${name(SIZES.length - 1)}, a quarter sizes`, ...withSizes, ''));
  const head = [
    'taxa x characters',
    'both, Node',
    'both, Chromium',
    'whole turn, Node',
    'whole turn, Chromium',
    'one pass at copying speed',
    'compile once, Node',
  ];
  return `### As in a key

Four rates of slips, \`not in this key\` and its kin. The whole turn goes from ten answers to the next question: posterior,
verdict, focus, proposals in order. Milliseconds, least of all runs; the budget is one frame, 16 ms, at 10,000 x 200, and
1 ms for a key of 85 taxa. In the last row every fourth character is a size of which no two taxa have the same range,
measured in one round. One pass at copying speed is what reading the table of shares once as doubles would take.

${table(head, rows)}`;
}

function notes(made: readonly Synthetic[], rounds: readonly Round[], bandwidth: number): string {
  const { numpy } = rounds[0] as Round;
  const cells = made.reduce((sum, one) => sum + one.first.length, 0);
  const percent = (count: (one: Synthetic) => number) =>
    `${((100 * made.reduce((sum, one) => sum + count(one), 0)) / cells).toFixed(1)} %`;
  const states = made.map((one) => (one.states.reduce((a, b) => a + b, 0) / one.characters).toFixed(2)).join(', ');
  const other = numpy
    ? `numpy ${numpy.numpy} on Python ${numpy.python}, one thread, products by ${numpy.blas}`
    : 'numpy was not there: install it (Debian: python3-numpy and libopenblas0) to have it measured too';
  return [
    `Made-up matrices: ${states} states a character on average; ${percent((one) => one.second.filter((s) => s >= 0).length)} of the cells have two states,`,
    `${percent((one) => one.first.filter((s) => s < 0).length)} are unknown. Beside it: ${other}.`,
    `Copying: ${(bandwidth / 1e9).toFixed(1)} GB a second, read and written.`,
    `Numpy, Node and Chromium took turns, ${ROUNDS} rounds.`,
  ].join('\n');
}
