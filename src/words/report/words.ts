// The sentences of a report. They come with the part that shows them.

/** Ways in which a place could not be found. */
export type PlaceTrouble = 'denied' | 'unavailable' | 'timeout' | 'insecure' | 'no-place-in-photo';
/** What a person typed and cannot be used, by the field. */
export type FieldTrouble = 'place' | 'swapped' | 'number' | 'date' | 'future' | 'email' | 'area';
export type PhotoTrouble = 'unreadable' | 'too-large' | 'too-many';
export type HeightOrder = 'under' | 'between' | 'over';

export interface ReportWords {
  readonly language: string;
  readonly heading: string;
  readonly intro: string;
  readonly stays: string;
  readonly needed: string;
  readonly there: string;
  readonly insecure: string;
  /** Somebody looked for a plant and saw none. */
  readonly none: {
    readonly tick: string;
    readonly help: string;
    readonly intro: string;
    readonly heading: string;
    readonly sought: string;
    readonly choose: string;
    readonly effort: string;
    readonly effortHelp: string;
    readonly date: string;
  };
  readonly photos: {
    readonly heading: string;
    readonly why: string;
    readonly add: string;
    readonly addThis: string;
    /** A photograph of what was asked for is there. */
    readonly have: string;
    readonly safe: string;
    /** What to take, by the part of the plant. */
    readonly wants: Readonly<Record<'whole' | 'leaf' | 'collar' | 'stem' | 'flower' | 'fruit' | 'place', string>>;
    readonly nth: (n: number) => string;
    readonly remove: string;
    readonly size: (kilobytes: string) => string;
    readonly stripped: string;
    readonly keep: string;
    readonly keepHelp: string;
    readonly kept: string;
    readonly none: string;
    readonly working: string;
    readonly trouble: Readonly<Record<PhotoTrouble, string>>;
  };
  readonly place: {
    readonly heading: string;
    readonly device: string;
    readonly photo: string;
    readonly photoHelp: string;
    readonly locating: string;
    readonly typed: string;
    readonly typedHelp: string;
    readonly within: string;
    readonly withinHelp: (size: string) => string;
    readonly source: Readonly<Record<'device' | 'typed' | 'map' | 'photo', string>>;
    readonly tell: string;
    readonly exact: string;
    readonly rough: (size: string) => string;
    readonly roughHelp: string;
    readonly leak: string;
    readonly words: string;
    readonly trouble: Readonly<Record<PlaceTrouble, string>>;
  };
  readonly date: { readonly heading: string; readonly label: string };
  readonly result: {
    readonly heading: string;
    readonly kind: Readonly<Record<'settled' | 'leaning' | 'open' | 'outside', (name: string, odds: string) => string>>;
    readonly answers: (n: number) => string;
    readonly opened: string;
    readonly none: string;
  };
  readonly more: {
    readonly heading: string;
    readonly size: string;
    readonly bankLength: string;
    readonly width: string;
    readonly gross: string;
    readonly infested: string;
    readonly unit: string;
    readonly units: Readonly<Record<'m' | 'ft' | 'yd' | 'km' | 'mi' | 'm2' | 'ft2' | 'acre' | 'ha', string>>;
    readonly how: string;
    readonly hows: Readonly<Record<'paced' | 'measured' | 'guessed' | 'drawn', string>>;
    readonly cover: string;
    readonly coverHelp: string;
    readonly coverClass: (from: number, to: number) => string;
    readonly height: string;
    readonly heightClass: Readonly<Record<HeightOrder, (low: string, high: string) => string>>;
    readonly phenology: string;
    readonly stages: Readonly<
      Record<'seedling' | 'leaves' | 'bud' | 'flower' | 'fruit' | 'seed-shed' | 'dormant' | 'resprout', string>
    >;
    readonly bank: string;
    readonly banks: Readonly<Record<'in-water' | 'waterline' | 'bank' | 'terrace', string>>;
    readonly side: string;
    readonly sides: Readonly<Record<'left' | 'right', string>>;
    readonly upstream: string;
    readonly upstreams: Readonly<Record<'seen' | 'not-seen' | 'not-looked', string>>;
    readonly treated: string;
    readonly treateds: Readonly<Record<'no' | 'yes' | 'unknown', string>>;
    readonly treatedNote: string;
    readonly land: string;
    readonly lands: Readonly<Record<'own' | 'neighbour' | 'public' | 'unknown', string>>;
    readonly access: string;
    readonly contact: string;
    readonly name: string;
    readonly phone: string;
    readonly email: string;
    readonly mayContact: string;
    readonly contactHelp: string;
    readonly mayShow: string;
    readonly remarks: string;
    readonly unsaid: string;
  };
  readonly trouble: Readonly<Record<FieldTrouble, string>>;
  readonly out: {
    readonly heading: string;
    readonly send: string;
    readonly sending: string;
    readonly stop: string;
    readonly mail: string;
    readonly mailHelp: string;
    readonly print: string;
    readonly file: string;
    readonly fileHelp: string;
    readonly forOffice: string;
    readonly lacking: (things: string) => string;
    readonly lack: Readonly<Record<'result' | 'sought' | 'photos' | 'place' | 'date' | 'effort', string>>;
    readonly check: string;
    readonly open: string;
    readonly openHelp: string;
    readonly badFile: string;
    readonly fresh: string;
    /** Goes back to the report that was set aside for this one. */
    readonly before: string;
    readonly copied: string;
    readonly copyFailed: string;
    readonly late: string;
    readonly unkept: string;
  };
  readonly receipt: {
    readonly heading: string;
    readonly number: string;
    readonly noNumber: string;
    readonly when: string;
    readonly sent: string;
    readonly what: (photos: number, kilobytes: string) => string;
    readonly see: string;
    readonly id: string;
    readonly copy: string;
    readonly next: string;
    readonly changed: string;
  };
  readonly waiting: {
    readonly heading: string;
    readonly reason: Readonly<Record<'no-signal' | 'too-slow' | 'busy' | 'server', string>>;
    /** It is sent by itself. */
    readonly queued: string;
    readonly safe: string;
    readonly again: string;
  };
  readonly refused: {
    readonly heading: string;
    readonly moved: string;
    readonly status: (n: number) => string;
    readonly said: string;
    readonly safe: string;
  };
  readonly skipped: string;
}
