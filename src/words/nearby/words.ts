// What "who helps near you" says, in one language.

export type DeviceFault = 'denied' | 'unavailable' | 'timeout' | 'insecure' | 'absent';

export interface NearbyWords {
  readonly language: string;
  readonly heading: string;
  /** While the plant has no likely name. */
  readonly headingOpen: string;
  readonly askFirst: string;
  /** Why the place is asked for, and that it stays here. */
  readonly why: string;
  readonly whose: string;
  readonly device: string;
  readonly asking: string;
  readonly fault: Readonly<Record<DeviceFault, string>>;
  readonly instead: string;
  readonly type: string;
  readonly typeLabel: string;
  readonly typeHint: string;
  readonly use: string;
  readonly wrong: Readonly<
    Record<'empty' | 'form' | 'latitude' | 'longitude' | 'sixty' | 'sign' | 'letter' | 'swapped', string>
  >;
  readonly map: string;
  readonly mapLabel: string;
  readonly mapHint: string;
  readonly mapUse: string;
  readonly crossIn: (place: string, names: string) => string;
  readonly crossOut: (place: string) => string;
  readonly letters: Readonly<Record<'north' | 'south' | 'east' | 'west', string>>;
  readonly place: Readonly<Record<'device' | 'typed' | 'map', (place: string, accuracy: string) => string>>;
  readonly another: string;
  /** Two sizes of one distance: the first as the person likes it. */
  readonly both: (one: string, other: string) => string;
  readonly inside: (programmes: number) => string;
  readonly near: (distance: string) => string;
  readonly outside: string;
  readonly outsideNearest: (name: string, distance: string) => string;
  readonly away: (distance: string) => string;
  readonly here: string;
  readonly unsure: (accuracy: string) => string;
  readonly otherSide: (place: string) => string;
  readonly otherSideUse: string;
  readonly ended: (name: string, date: string) => string;
  readonly onlyFor: (plants: string) => string;
  readonly otherPlants: string;
  readonly meantFor: (plant: string) => string;
  readonly offers: string;
  readonly until: (date: string) => string;
  readonly checked: (date: string) => string;
  readonly due: (date: string) => string;
  readonly speaks: (languages: string) => string;
  readonly call: (phone: string) => string;
  readonly write: (email: string) => string;
  readonly form: string;
  readonly newTab: string;
  /** Above whom to ask wherever the plant is: before a place was said, and after. */
  readonly anyway: string;
  readonly others: string;
  readonly page: string;
  readonly nobody: string;
  readonly yourself: string;
  readonly failed: string;
  readonly mistakes: string;
  readonly more: (n: number) => string;
  readonly retry: string;
  readonly coming: string;
  readonly upstream: string;
  readonly upstreamSay: readonly string[];
  readonly subject: Readonly<
    Record<'settled' | 'leaning' | 'open', (plants: string) => string> & Record<'outside' | 'none', string>
  >;
  readonly mailKey: (title: string, answers: number) => string;
  readonly mailPlace: (place: string) => string;
  readonly mailNoPlace: string;
}
