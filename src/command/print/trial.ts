// What `trial` prints for people.
import type { Share, Spread } from '../../engine/trial/index.ts';
import type { Character, Key } from '../../key/index.ts';
import type { Paint } from '../paint.ts';
import type { ObserverReport, TrialReport } from '../trial/report.ts';
import { nameOf } from './names.ts';
import { count, table } from './table.ts';

const WORST = 8;

/** What each kind of observer that the engine does not assume does, in a few words. */
const WHO: ReadonlyMap<string, string> = new Map([
  ['twice-the-slips', 'twice the slips'],
  ['habitual-mix-up', 'a habitual mix-up'],
  ['hanging-together', 'slips hang together'],
  ['dwarfed-plants', 'dwarfed plants'],
  ['not-in-the-key', 'plant not in the key'],
  ['one-wrong-answer', 'one answer wrong'],
]);
const who = ({ id }: ObserverReport): string => WHO.get(id) ?? id;

export const percentOf = (share: number, digits = 1): string => `${(100 * share).toFixed(digits)} %`;

/** `94.7 % (93.6-95.6)`, or `-` of nothing. */
export function shareText({ share, low, high }: Share): string {
  if (share === undefined) return '-';
  return `${percentOf(share)} (${(100 * low).toFixed(1)}-${(100 * high).toFixed(1)})`;
}

const spreadText = (spread: Spread | undefined): string[] =>
  spread === undefined ? ['-', '-', '-'] : [spread.mean.toFixed(1), `${spread.median}`, `${spread.p95}`];

export function trialReport(key: Key, report: TrialReport, paint: Paint): string {
  const { observers } = report;
  const when = report.month === null ? 'a month drawn for each' : `month ${report.month}`;
  const section = (title: string, head: readonly string[], row: (one: ObserverReport) => readonly string[]) => [
    paint('heading', title),
    ...rows([['', ...head], ...observers.map((one) => [who(one), ...row(one)])], paint),
    '',
  ];
  return `${[
    `${paint('heading', key.title)} (${key.id} ${key.version}): ${count(report.plants, 'plant')} for each kind of observer, ${when}, seed ${report.seed}, ${report.way} way`,
    '',
    ...section('Named', ['right one first', 'among first two', 'settled', 'of those right'], (one) =>
      [one.topOne, one.topTwo, one.settled, one.settledRight].map(shareText),
    ),
    ...section('Not settled', ['leaning', 'of those right', 'open', 'not in this key'], (one) =>
      [one.leaning, one.leaningRight, one.open, one.outside].map(shareText),
    ),
    ...section('Natives called invasive', ['settled, of native plants', '', 'leaning', ''], (one) => [
      shareText(one.nativesSettledAsInvasive),
      outOf(one.nativesSettledAsInvasive),
      shareText(one.nativesLeaningToInvasive),
      outOf(one.nativesLeaningToInvasive),
    ]),
    ...section(
      'Questions',
      ['mean', 'median', '95 %', 'answered', 'to settled', 'median', '95 %', 'answered'],
      (one) => [
        ...spreadText(one.questions),
        one.answers.mean.toFixed(1),
        ...spreadText(one.questionsToSettled),
        one.answersToSettled?.mean.toFixed(1) ?? '-',
      ],
    ),
    ...beside(report, paint),
    ...calibration(report, paint),
    ...secondLook(report, paint),
    ...bound(key, report, paint),
    ...slips(key, report, paint),
    ...pairs(key, report, paint),
  ].join('\n')}`;
}

const rows = (cells: readonly (readonly string[])[], paint: Paint): string[] =>
  table(cells, (cell, _, row) => (row === 0 ? paint('quiet', cell) : cell)).map((line) => `  ${line}`);

const outOf = ({ count: found, n }: Share): string => `${found} of ${n}`;

function beside({ observers, beside: other }: TrialReport, paint: Paint): string[] {
  if (other === null) return [];
  const byId = new Map(other.observers.map((one) => [one.id, one]));
  const both = (one: ObserverReport, of: (report: ObserverReport) => string) => {
    const same = byId.get(one.id);
    return `${of(one)} | ${same === undefined ? '-' : of(same)}`;
  };
  const share = ({ share: of }: Share) => (of === undefined ? '-' : percentOf(of));
  return [
    paint('heading', `Chosen freely | by the couplets and then freely (${count(other.plants, 'plant')})`),
    ...rows(
      [
        ['', 'right one first', 'among first two', 'settled', 'of those right', 'natives as invasive', 'questions'],
        ...observers.map((one) => [
          who(one),
          both(one, ({ topOne }) => share(topOne)),
          both(one, ({ topTwo }) => share(topTwo)),
          both(one, ({ settled }) => share(settled)),
          both(one, ({ settledRight }) => share(settledRight)),
          both(one, ({ nativesSettledAsInvasive: natives }) => share(natives)),
          both(one, ({ questions }) => questions.mean.toFixed(1)),
        ]),
      ],
      paint,
    ),
    '',
  ];
}

function calibration({ observers, calibration: mixed }: TrialReport, paint: Paint): string[] {
  const head = ['', 'error', 'Brier', 'reliability', 'resolution', 'uncertainty', 'error along the way'];
  const row = (name: string, at: ObserverReport['atTheEnd'], along: ObserverReport['atTheEnd']) => [
    name,
    ...[at.error, at.brier, at.reliability, at.resolution, at.uncertainty, along.error].map(
      (x) => x?.toFixed(3) ?? '-',
    ),
  ];
  const [first] = observers;
  return [
    paint('heading', "Calibration: the leading plant's probability against how often it was right"),
    ...rows(
      [
        head,
        ...observers.map((one) => row(who(one), one.atTheEnd, one.alongTheWay)),
        ...(mixed === null
          ? []
          : [row(`${first?.id}, ${percentOf(mixed.outside, 0)} not in key`, mixed.atTheEnd, mixed.alongTheWay)]),
      ],
      paint,
    ),
    ...rows(
      [
        [
          `${first?.id}: predicted`,
          ...(first?.atTheEnd.bins ?? []).map(({ predicted }) => predicted?.toFixed(2) ?? '-'),
        ],
        ['observed', ...(first?.atTheEnd.bins ?? []).map(({ observed }) => observed?.toFixed(2) ?? '-')],
        ['plants', ...(first?.atTheEnd.bins ?? []).map(({ n }) => `${n}`)],
      ],
      (_, text) => text,
    ),
    '',
  ];
}

function secondLook({ observers }: TrialReport, paint: Paint): string[] {
  const one = observers.find(({ secondLook: look }) => look !== undefined);
  if (one?.secondLook === undefined) return [];
  const { first, amongTwo, starkAmongTwo } = one.secondLook;
  return [
    paint('heading', 'One answer made wrong'),
    `  The right plant is among the first two in ${shareText(one.topTwo)}.`,
    `  The wrong answer is the first named for a second look in ${shareText(first)}, one of the first two in ${shareText(amongTwo)};`,
    `  where it says what that plant never shows, one of the first two in ${shareText(starkAmongTwo)}.`,
    '',
  ];
}

function bound(key: Key, { bound: of, observers }: TrialReport, paint: Paint): string[] {
  const label = labelOf(key, of.character);
  const times = (x: number | null) => (x === null ? '' : `, asked until settled: ${x.toFixed(2)} times that`);
  return [
    paint('heading', `The bound from information (${observers[0]?.id})`),
    `  ${of.bits.toFixed(2)} bits must be learned to settle a plant. One question carries at most ${of.capacity.toFixed(2)} (${label}):`,
    `  ${of.questions.toFixed(2)} questions at least${times(of.ratio)}.`,
    of.questionsOnce === null
      ? '  All questions, each asked once, cannot carry that many.'
      : `  With each question asked but once, ${of.questionsOnce.toFixed(2)} at least${times(of.ratioOnce)}.`,
    '',
  ];
}

function slips(key: Key, { observers }: TrialReport, paint: Paint): string[] {
  const [first] = observers;
  const worst = (first?.slips ?? []).filter(({ hurt }) => hurt > 0).slice(0, WORST);
  if (first === undefined || worst.length === 0) return [];
  return [
    paint('heading', `Misreadings that hurt most (${first.id})`),
    ...rows(
      [
        ['', 'asked', 'misread', 'then not first', 'else', 'plants lost of 1,000'],
        ...worst.map((one) => [
          labelOf(key, one.character),
          `${one.asked}`,
          `${one.misread}`,
          percentOf(one.lostWhenMisread, 0),
          percentOf(one.lostWhenRight, 0),
          one.hurt.toFixed(1),
        ]),
      ],
      paint,
    ),
    '',
  ];
}

function pairs(key: Key, { observers }: TrialReport, paint: Paint): string[] {
  const status = new Map(key.taxa.map((taxon) => [taxon.id, taxon.status]));
  const shown = (title: string, one: ObserverReport | undefined, order: 'count' | 'settled', alarms = false) => {
    const list = (one?.pairs ?? [])
      .filter((pair) => pair[order] > 0)
      .filter((pair) => !alarms || (status.get(pair.taxon) === 'native' && status.get(pair.takenFor) === 'invasive'))
      .sort((a, b) => b[order] - a[order])
      .slice(0, WORST);
    if (one === undefined || list.length === 0) return [];
    return [
      paint('heading', title),
      ...rows(
        [
          ['plant', 'taken for', 'plants', 'likeliest', 'settled'],
          ...list.map((pair) => [
            nameOf(key, pair.taxon),
            nameOf(key, pair.takenFor),
            `${pair.plants}`,
            `${pair.count}`,
            `${pair.settled}`,
          ]),
        ],
        paint,
      ),
      '',
    ];
  };
  const leftOut = observers.find(({ id }) => id === 'not-in-the-key');
  return [
    ...shown(`Taken for one another most (${observers[0]?.id})`, observers[0], 'count'),
    ...shown('Left out of the key and settled as another', leftOut, 'settled'),
    ...shown('Native, left out of the key, and settled as invasive', leftOut, 'settled', true),
  ];
}

const labelOf = (key: Key, id: string): string =>
  (key.characters.find((character) => character.id === id) as Character).label;
