// What a report says in one language, beside the words that elements share.
import type { Words } from '../../words/index.ts';
import type {
  Bank,
  Extent,
  Land,
  Phenology,
  PhotoKind,
  Place,
  Review,
  Side,
  Treated,
  Upstream,
} from '../find/index.ts';
import { en } from './en.ts';
import { es } from './es.ts';

export interface PhotoWords {
  readonly title: string;
  /** How to take it, in one or two sentences. */
  readonly how: string;
}

export interface OwnWords {
  readonly title: string;
  /** Line of a mail: the plant and the day. */
  readonly subject: (plant: string, date: string) => string;
  readonly notDetected: (plant: string) => string;
  readonly chance: (odds: string, answers: number) => string;
  readonly unconfirmed: string;
  readonly cautions: string;
  readonly cautionsOf: (plants: string) => string;
  readonly heading: Readonly<
    Record<'where' | 'answers' | 'standing' | 'stand' | 'photos' | 'person' | 'review' | 'about', string>
  >;
  readonly feature: string;
  readonly answer: string;
  readonly sure: string;
  readonly time: string;
  readonly plant: string;
  readonly here: string;
  readonly odds: string;
  readonly outside: string;
  readonly date: string;
  /** The date, where none was seen. */
  readonly looked: string;
  readonly position: string;
  readonly within: (distance: string) => string;
  readonly placed: Readonly<Record<Place['source'], string>>;
  readonly way: string;
  readonly coarse: string;
  readonly noPlace: string;
  readonly bankLength: string;
  readonly width: string;
  readonly grossArea: string;
  readonly infestedArea: string;
  readonly how: string;
  readonly measured: Readonly<Record<NonNullable<Extent['how']>, string>>;
  readonly cover: string;
  /** A Daubenmire class and its bounds in percent. */
  readonly coverClass: (number: number, from: number, to: number) => string;
  readonly height: string;
  readonly phenology: string;
  readonly phenologies: Readonly<Record<Phenology, string>>;
  readonly bank: string;
  readonly banks: Readonly<Record<Bank, string>>;
  readonly side: string;
  readonly sides: Readonly<Record<Side, string>>;
  readonly upstream: string;
  readonly upstreams: Readonly<Record<Upstream, string>>;
  readonly treated: string;
  readonly treatments: Readonly<Record<Treated, string>>;
  readonly land: string;
  readonly lands: Readonly<Record<Land, string>>;
  readonly access: string;
  readonly effort: string;
  readonly remarks: string;
  readonly name: string;
  readonly phone: string;
  readonly email: string;
  readonly noContact: string;
  readonly noPhotos: string;
  readonly attached: (photos: number) => string;
  readonly photo: Readonly<Record<PhotoKind, PhotoWords>>;
  readonly reviewed: Readonly<Record<Review['status'], string>>;
  readonly by: string;
  readonly wanted: string;
  readonly key: string;
  readonly month: string;
  readonly observer: string;
  readonly number: string;
  readonly made: string;
  readonly changed: string;
  /** Of a mail that is too short to hold all: the name of the file to attach. */
  readonly attach: (file: string) => string;
}

export interface FormWords {
  readonly language: string;
  readonly common: Words['common'];
  readonly verdict: Pick<Words['verdict'], 'settled' | 'leaning' | 'open' | 'outside' | 'couldBe'>;
  readonly sureness: Words['trail']['sureness'];
  readonly observers: Words['key']['observers'];
  readonly own: OwnWords;
}

/** A report's words in the language of these. */
export function formWords({ language, common, key: { observers }, verdict, trail: { sureness } }: Words): FormWords {
  return { language, common, verdict, sureness, observers, own: language === 'es' ? es : en };
}
