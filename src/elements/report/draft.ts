// A report as somebody has typed it so far: nothing is read or refused here, so nothing can be lost.
import type { Find, FindPhoto } from '../../report/find/index.ts';
import type { Receipt } from '../../report/send/index.ts';

/** A photograph of the draft, with the picture itself. */
export interface DraftPhoto extends Omit<FindPhoto, 'data'> {
  readonly blob: Blob;
}

/** What is typed or chosen, each as text; a box that is ticked holds `yes`. */
export const FIELDS = [
  'none',
  'sought',
  'effort',
  'keep',
  'noPhotos',
  'place',
  'source',
  'uncertainty',
  'uncertaintyUnit',
  'tell',
  'way',
  'date',
  'bankLength',
  'width',
  'lengthUnit',
  'gross',
  'infested',
  'areaUnit',
  'how',
  'cover',
  'height',
  'phenology',
  'bank',
  'side',
  'upstream',
  'treated',
  'treatedNote',
  'land',
  'access',
  'name',
  'phone',
  'email',
  'mayContact',
  'mayShow',
  'remarks',
] as const;
export type Field = (typeof FIELDS)[number];

export interface Draft {
  /** Id of the find it becomes. */
  readonly id: string;
  /** ISO 8601 with time and offset. */
  readonly made: string;
  readonly changed: string;
  readonly fields: Readonly<Record<Field, string>>;
  readonly photos: readonly DraftPhoto[];
  /** What the key said, where that is settled: of a file, or of a plant that the page has left. Else what it says now. */
  readonly base?: Find;
  /** That it arrived, when it was last sent, and the find that arrived, as JSON. */
  readonly sent?: { readonly receipt: Receipt; readonly find: string };
}

export const EMPTY = Object.fromEntries(FIELDS.map((field) => [field, ''])) as Readonly<Record<Field, string>>;

/** `today` as YYYY-MM-DD. */
export const blankDraft = (id: string, made: string, today: string): Draft => ({
  id,
  made,
  changed: made,
  fields: { ...EMPTY, date: today },
  photos: [],
});

export const withField = (draft: Draft, field: Field, value: string): Draft => ({
  ...draft,
  fields: { ...draft.fields, [field]: value },
});

/** Whether somebody has put anything into it but the day. */
export const hasContent = ({ fields, photos }: Draft): boolean =>
  photos.length > 0 || FIELDS.some((field) => field !== 'date' && fields[field].trim() !== '');
