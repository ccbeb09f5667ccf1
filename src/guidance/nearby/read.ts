// From the text of a file of service areas (GeoJSON, RFC 7946) to what a page uses; every fault told where it stands.
import { deepFreeze, frozenMap } from '../../key/freeze.ts';
import { readJson } from '../../key/json.ts';
import type { Path } from '../../key/path.ts';
import { describeProblem, type Problem, Problems } from '../../key/problem.ts';
import { compare, type Shape } from '../../key/shape.ts';
import { strictDate } from '../../key/strict/dates.ts';
import { readLines, readPolygons } from './geometry.ts';
import { areaShapes, fileShape, landmarkShape, landmarkShapes, programmeShape } from './shape.ts';
import type { Area, Areas, Contact, Elsewhere, Landmark, Texts } from './types.ts';

/** Problems of the file are told under this name. */
export const AREAS = 'areas';
const LIMITS = { bytes: 2_000_000, depth: 20, items: 300_000 };
/** Kilometres from an edge that count as near where the file does not say: ten miles, rounded (ours). */
const NEAR = 16;

/** A file of service areas that cannot be used. */
export class AreasError extends Error {
  override readonly name = 'AreasError';
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    const told = problems.slice(0, 10).map((problem) => `  ${describeProblem(problem)}`);
    super(['These service areas cannot be used.', ...told].join('\n'));
    this.problems = Object.freeze([...problems]);
  }
}

type Loose = Readonly<Record<string, unknown>>;
type LooseTexts = string | Readonly<Record<string, string>>;
interface LooseContact extends Omit<Contact, 'post' | 'hours' | 'languages'> {
  readonly post?: LooseTexts;
  readonly hours?: LooseTexts;
  readonly languages?: readonly string[];
}
interface LooseElsewhere {
  readonly name: LooseTexts;
  readonly statement?: LooseTexts;
  readonly contacts: readonly LooseContact[];
}
interface LooseProgramme {
  readonly programme: LooseTexts;
  readonly organisation?: LooseTexts;
  readonly statement?: LooseTexts;
  readonly offers?: readonly LooseTexts[];
  readonly contacts: readonly LooseContact[];
  readonly until?: string;
  readonly reviewed: string;
  readonly review?: string;
  readonly plants?: readonly string[];
}
interface LooseFeature {
  readonly id?: string | number;
  readonly geometry: { readonly type: string; readonly coordinates: unknown };
  readonly properties: Loose;
}
interface LooseFile {
  readonly crs?: unknown;
  readonly bbox?: readonly [number, number, number, number];
  readonly near?: number;
  readonly elsewhere?: LooseElsewhere;
  readonly features: readonly LooseFeature[];
}

/**
 * The service areas that a text describes, deep-frozen. Rings wound the wrong way are mended, and so are rings that
 * cross the antimeridian without a cut.
 * @throws AreasError with every problem found
 */
export function readAreas(text: string): Areas {
  const problems = new Problems();
  const content = readJson(text, { file: AREAS, problems, limits: LIMITS });
  if (problems.none) check(content, fileShape, [], problems);
  if (!problems.none) throw new AreasError(problems.list);
  const file = content as LooseFile;
  checkFrame(file, problems);
  const areas: Area[] = [];
  const landmarks: Landmark[] = [];
  const ids = new Set<string>();
  file.features.forEach((feature, i) => {
    const at = ['features', i];
    if (Object.hasOwn(feature.properties, 'landmark')) {
      const landmark = readLandmark(feature, at, file, problems);
      if (landmark) landmarks.push(landmark);
      return;
    }
    const id = String(feature.id ?? i + 1);
    if (ids.has(id)) problems.wrong(AREAS, [...at, 'id'], 'duplicate-id', 'each id only once', id);
    ids.add(id);
    const area = readArea(feature, id, at, file, problems);
    if (area) areas.push(area);
  });
  if (problems.none && areas.length === 0)
    problems.error(AREAS, ['features'], 'needs', 'at least one area with a programme', 'landmarks only');
  if (!problems.none) throw new AreasError(problems.list);
  return deepFreeze({
    areas,
    landmarks,
    near: (file.near ?? NEAR) * 1000,
    ...(file.elsewhere ? { elsewhere: strictElsewhere(file.elsewhere) } : {}),
  });
}

/** Notes what differs from the shape; whether nothing does. */
function check(value: unknown, shape: Shape, at: Path, problems: Problems): boolean {
  let fine = true;
  compare(value, shape, (below, code, expected, found) => {
    fine = false;
    problems.error(AREAS, [...at, ...below], code, expected, found);
  });
  return fine;
}

function checkFrame({ crs, elsewhere }: LooseFile, problems: Problems): void {
  // The form of 2008 could name another system; RFC 7946 (section 4) knows WGS 84 only.
  if (crs !== undefined && crs !== null && !/CRS:?:?84|EPSG:?:?4326/.test(JSON.stringify(crs)))
    problems.wrong(AREAS, ['crs'], 'value', 'longitude and latitude on WGS 84, and no other system', crs);
  if (elsewhere) checkContacts(elsewhere.contacts, ['elsewhere', 'contacts'], problems);
}

function checkContacts(contacts: readonly LooseContact[], at: Path, problems: Problems): void {
  contacts.forEach(({ phone, email, form, post }, i) => {
    if (phone === undefined && email === undefined && form === undefined && post === undefined)
      problems.error(AREAS, [...at, i], 'needs', 'a phone, an email, a form or a post address', 'none of them');
  });
}

function geometryFits({ geometry }: LooseFeature, shapes: ReadonlyMap<string, Shape>, at: Path, problems: Problems) {
  const shape = shapes.get(geometry.type);
  const place = [...at, 'geometry'];
  if (shape) return check(geometry, shape, place, problems);
  problems.wrong(AREAS, [...place, 'type'], 'value', `one of ${[...shapes.keys()].join(', ')}`, geometry.type);
  return false;
}

function readLandmark(feature: LooseFeature, at: Path, { bbox }: LooseFile, problems: Problems): Landmark | undefined {
  const fine = check(feature.properties, landmarkShape, [...at, 'properties'], problems);
  if (!geometryFits(feature, landmarkShapes, at, problems) || !fine) return undefined;
  const lines = readLines(feature.geometry, [...at, 'geometry'], bbox, problems);
  return { name: strictTexts(feature.properties.landmark as LooseTexts), lines };
}

function readArea(feature: LooseFeature, id: string, at: Path, { bbox }: LooseFile, problems: Problems) {
  const inside = [...at, 'properties'];
  const fine = check(feature.properties, programmeShape, inside, problems);
  if (!geometryFits(feature, areaShapes, at, problems) || !fine) return undefined;
  const loose = feature.properties as unknown as LooseProgramme;
  for (const name of ['until', 'reviewed', 'review'] as const) {
    const date = loose[name];
    if (date !== undefined) strictDate(date, AREAS, [...inside, name], problems);
  }
  if (loose.review !== undefined && loose.review < loose.reviewed)
    problems.wrong(AREAS, [...inside, 'review'], 'order', `a day after "${loose.reviewed}"`, loose.review);
  checkContacts(loose.contacts, [...inside, 'contacts'], problems);
  return strictArea(loose, id, readPolygons(feature.geometry, [...at, 'geometry'], bbox, problems));
}

function strictArea(loose: LooseProgramme, id: string, polygons: Area['polygons']): Area {
  const { organisation, statement, until, plants, reviewed } = loose;
  return {
    id,
    programme: strictTexts(loose.programme),
    ...(organisation === undefined ? {} : { organisation: strictTexts(organisation) }),
    ...(statement === undefined ? {} : { statement: strictTexts(statement) }),
    offers: (loose.offers ?? []).map(strictTexts),
    contacts: loose.contacts.map(strictContact),
    ...(until === undefined ? {} : { until }),
    reviewed,
    due: loose.review ?? yearAfter(reviewed),
    ...(plants === undefined ? {} : { plants }),
    polygons,
  };
}

/** A year is long for a telephone number (ours). 29 February becomes 28. */
function yearAfter(day: string): string {
  const next = `${String(Number(day.slice(0, 4)) + 1).padStart(4, '0')}${day.slice(4)}`;
  return next.replace(/-02-29$/, '-02-28');
}

const strictElsewhere = ({ name, statement, contacts }: LooseElsewhere): Elsewhere => ({
  name: strictTexts(name),
  ...(statement === undefined ? {} : { statement: strictTexts(statement) }),
  contacts: contacts.map(strictContact),
});

const strictContact = ({ post, hours, languages = [], ...rest }: LooseContact): Contact => ({
  ...rest,
  ...(post === undefined ? {} : { post: strictTexts(post) }),
  ...(hours === undefined ? {} : { hours: strictTexts(hours) }),
  languages,
});

const strictTexts = (texts: LooseTexts): Texts =>
  frozenMap(typeof texts === 'string' ? [['', texts]] : Object.entries(texts));
