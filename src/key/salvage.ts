// What can still be checked when some of the content has the wrong shape: so that a person who mends one field learns of
// the misspelt id elsewhere in the same run.
import { compareContent, keyOf } from './content.ts';
import type { LooseBundle, LooseKey } from './loose.ts';
import type { Path } from './path.ts';
import { type Finding, type ProblemCode, Problems } from './problem.ts';

/** A content that is only ever looked at to find more problems, and so may be changed. */
type Rubble = { -readonly [Name in keyof LooseBundle]: LooseBundle[Name] };

/**
 * Adds to `problems` those of how the parts go together, leaving out the parts that have been told of. `content` is
 * changed, and of no use afterwards. Without characters or taxa that can be read nothing is added.
 */
export function salvage(content: unknown, problems: Problems): void {
  const rest = content as Rubble;
  const broken = new Set(problems.findings.filter((finding) => !removed(rest, finding)).map(({ file }) => file));
  if (problems.more > 0 || broken.has('characters.json') || broken.has('taxa.json')) return;
  if (broken.has('key.json')) rest.key = ANY_KEY;
  if (broken.has('guidance.json')) rest.guidance = { entries: [] };
  if (broken.has('couplets.json')) delete rest.couplets;
  rest.text = Object.fromEntries(
    Object.entries(rest.text ?? {}).filter(([language]) => !broken.has(`text/${language}.json`)),
  );
  if (broken.has('sources.json')) rest.sources = { sources: [] };

  const fine = new Problems();
  compareContent(rest, fine);
  if (!fine.none) return;
  const found = new Problems();
  keyOf(rest, found);
  for (const finding of found.findings) {
    const { code } = finding.problem;
    // What was put in the place of a file proves nothing.
    if (broken.has('key.json') && (code === 'language' || finding.file === 'key.json')) continue;
    if (broken.has('sources.json') && finding.at.some((step) => step === 'source' || step === 'statusSource')) continue;
    problems.add(finding);
  }
  problems.more += found.more;
}

/** Problems of the text that leave a value to go on with. */
const HARMLESS: ReadonlySet<ProblemCode> = new Set(['duplicate-field', 'reserved-field', 'bad-text', 'bad-number']);

/** Takes out the smallest part that the problem spoils, if nothing else hangs on it; whether it was so. */
function removed(content: Rubble, { file, at, problem }: Finding): boolean {
  const whole = file.replace('.json', '').split('/');
  if (inside(content, whole) === undefined) return false;
  if (HARMLESS.has(problem.code)) return true;
  const spoilt = spoiltBy(file, at) ?? (problem.code === 'unknown-field' ? at : undefined);
  if (spoilt === undefined) return false;
  const parent = inside(content, [...whole, ...spoilt.slice(0, -1)]);
  if (typeof parent === 'object' && parent !== null) delete (parent as Loose)[spoilt.at(-1) ?? ''];
  return true;
}

type Loose = Record<string | number, unknown>;

const inside = (content: unknown, path: Path): unknown =>
  path.reduce<unknown>((value, step) => (value as Loose | null | undefined)?.[step], content);

/** A trait, the list of look-alikes, or a translation: nothing refers to these. */
function spoiltBy(file: string, at: Path): Path | undefined {
  const [field, , traits] = at;
  if (file === 'taxa.json' && traits === 'traits' && at.length > 3) return at.slice(0, 4);
  if (file === 'taxa.json' && field === 'lookalikes') return ['lookalikes'];
  if (file.startsWith('text/') && field === 'text' && at.length > 1) return at.slice(0, 2);
  return undefined;
}

/** Stands for a key.json that cannot be read. */
const ANY_KEY: LooseKey = {
  ...{ format: 1, id: 'any', version: '1', title: 'any', region: 'any', reviewed: '2000-01-01' },
  ...{ languages: ['en'], units: 'us', licence: 'any', cautions: [] },
};
