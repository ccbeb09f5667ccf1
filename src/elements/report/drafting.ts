// The report under the hands of a person: every change is kept, and what takes its time never lands in another report.
import type { Find, Place } from '../../report/find/index.ts';
import { PhotoError, preparePhoto } from '../../report/photos/index.ts';
import type { PhotoTrouble } from '../../words/report/index.ts';
import { blankDraft, type Draft, type DraftPhoto, type Field, hasContent, withField } from './draft.ts';
import type { Keeper } from './keeper.ts';
import { coordinatesOf } from './where.ts';

const MOST_PHOTOS = 12;

export interface Around {
  readonly keeper: Keeper;
  /** ISO 8601 with time and offset. */
  readonly now: () => string;
  /** Something is to be drawn anew. */
  readonly changed: () => void;
}

export class Drafting {
  draft: Draft | undefined;
  /** The report that was set aside for this one. */
  aside: Draft | undefined;
  /** The device could not keep the last change. */
  unkept = false;
  photoTrouble: PhotoTrouble | undefined;
  /** Photographs as they came, for their place and for sending them so; only while the page stays open. */
  readonly originals = new Map<string, File>();

  readonly #around: Around;
  readonly #key: string;
  #atWork = 0;

  /** `key` is the id of the key that the reports belong to. */
  constructor(key: string, around: Around) {
    this.#key = key;
    this.#around = around;
  }

  /** Photographs are being made ready. */
  get working(): boolean {
    return this.#atWork > 0;
  }

  /** Takes up what was kept, or begins. */
  async begin(): Promise<void> {
    const { keeper, changed } = this.#around;
    this.draft = this.#blank();
    changed();
    // A device that never answers keeps nobody from beginning.
    const [kept, aside] = await Promise.all(
      [this.#key, this.#beside].map((name) => keeper.load(name).catch(() => undefined)),
    );
    if (kept && !hasContent(this.draft)) this.draft = kept;
    this.aside ??= aside;
    changed();
  }

  set(field: Field, value: string): void {
    const { draft } = this;
    if (!draft) return;
    let next = withField(draft, field, value);
    // What is typed over a place from elsewhere is typed, and as uncertain as it is written.
    if (field === 'place') next = withField(withField(next, 'source', 'typed'), 'uncertainty', '');
    this.#change(next);
    if (field === 'keep') void this.#work(draft.id);
  }

  /** Puts in a place that was not typed; `id` is the report it was looked for. */
  put(
    id: string,
    at: { readonly lat: number; readonly lon: number; readonly uncertainty?: number; readonly date?: string },
    source: Place['source'],
    units: 'us' | 'metric',
  ): void {
    const { draft } = this;
    if (draft?.id !== id) return;
    const metres = at.uncertainty ?? 0;
    const us = units === 'us';
    this.#change({
      ...draft,
      fields: {
        ...draft.fields,
        place: coordinatesOf(at),
        source,
        uncertainty: metres > 0 ? String(Math.ceil(us ? metres / 0.3048 : metres)) : '',
        uncertaintyUnit: us ? 'ft' : 'm',
        ...(at.date ? { date: at.date } : {}),
      },
    });
  }

  /** Makes photographs ready and adds them; `wants` is what the checklist asked for. */
  async add(files: readonly File[], wants: string | undefined): Promise<void> {
    const id = this.draft?.id;
    this.photoTrouble = undefined;
    await this.#busy(async () => {
      for (const file of files) {
        if (this.draft?.id !== id) return;
        if (this.draft && this.draft.photos.length >= MOST_PHOTOS) {
          this.photoTrouble = 'too-many';
          return;
        }
        const photo = await prepared(crypto.randomUUID(), file, this.draft?.fields.keep === 'yes');
        const { draft } = this;
        if (!draft || draft.id !== id) return;
        this.originals.set(photo.id, file);
        this.#change({ ...draft, photos: [...draft.photos, { ...photo, ...(wants ? { wants } : {}) }] });
      }
    });
    await this.#work(id);
  }

  remove(photo: string): void {
    const { draft } = this;
    if (!draft) return;
    this.originals.delete(photo);
    this.photoTrouble = undefined;
    this.#change({ ...draft, photos: draft.photos.filter(({ id }) => id !== photo) });
  }

  /** The report with this id arrived. */
  arrived(id: string, sent: NonNullable<Draft['sent']>): void {
    if (this.draft?.id === id) {
      this.draft = { ...this.draft, sent };
      this.#keep(this.#key, this.draft);
    } else if (this.aside?.id === id) {
      this.aside = { ...this.aside, sent };
      this.#keep(this.#beside, this.aside);
    }
  }

  /** Begins another report; the one before is kept with what the key said of it. */
  startAnew(find: Find | undefined): void {
    this.open(this.#blank(), find);
  }

  /** Turns to another report. */
  open(draft: Draft, find: Find | undefined): void {
    if (this.draft && find && hasContent(this.draft)) {
      this.aside = { ...this.draft, base: find };
      this.#keep(this.#beside, this.aside);
    }
    this.originals.clear();
    this.photoTrouble = undefined;
    this.#change(draft);
  }

  /** Goes back to the report that was set aside. */
  takeUp(find: Find | undefined): void {
    const { aside } = this;
    if (!aside) return;
    this.aside = undefined;
    this.#around.keeper.drop(this.#beside).catch(() => undefined);
    this.open(aside, find);
  }

  get #beside(): string {
    return `${this.#key}/before`;
  }

  #blank(): Draft {
    const now = this.#around.now();
    return blankDraft(crypto.randomUUID(), now, now.slice(0, 10));
  }

  #change(next: Draft): void {
    this.draft = { ...next, changed: this.#around.now() };
    this.#keep(this.#key, this.draft);
    this.#around.changed();
  }

  #keep(name: string, draft: Draft): void {
    const told = (unkept: boolean) => () => {
      if (this.unkept === unkept) return;
      this.unkept = unkept;
      this.#around.changed();
    };
    this.#around.keeper.save(name, draft).then(told(false), told(true));
  }

  /** Brings every photograph to what is ticked, one after the other: ticked and unticked in a hurry, the last word holds. */
  async #work(id: string | undefined): Promise<void> {
    if (this.working) return;
    await this.#busy(async () => {
      for (let next = this.#unlike(); next && this.draft?.id === id; next = this.#unlike()) {
        const photo = await prepared(next.id, next.from, next.keep);
        const { draft } = this;
        if (!draft || draft.id !== id) return;
        this.#change({
          ...draft,
          photos: draft.photos.map((one) => (one.id === photo.id ? { ...one, ...photo } : one)),
        });
      }
    });
  }

  /** A photograph that is not as ticked. One that is no longer here as it came can be stripped, but not sent so. */
  #unlike(): { readonly id: string; readonly from: Blob; readonly keep: boolean } | undefined {
    const keep = this.draft?.fields.keep === 'yes';
    for (const { id, hiddenDataKept, blob } of this.draft?.photos ?? []) {
      const from = this.originals.get(id) ?? (keep ? undefined : blob);
      if (hiddenDataKept !== keep && from) return { id, from, keep };
    }
    return undefined;
  }

  async #busy(work: () => Promise<void>): Promise<void> {
    this.#atWork++;
    this.#around.changed();
    try {
      await work();
    } catch (error) {
      if (!(error instanceof PhotoError)) throw error;
      this.photoTrouble = error.code;
    } finally {
      this.#atWork--;
      this.#around.changed();
    }
  }
}

async function prepared(id: string, file: Blob, keep: boolean): Promise<DraftPhoto> {
  const { blob, type, width, height, sha256, hiddenDataKept } = await preparePhoto(file, keep);
  return { id, type, width, height, bytes: blob.size, sha256, hiddenDataKept, blob };
}
