// The sentences of the crew's page.

export interface CrewWords {
  readonly heading: string;
  readonly intro: string;
  readonly open: string;
  readonly drop: string;
  readonly examples: (n: number) => string;
  readonly notFetched: (address: string) => string;
  /** Above the crew: the day on which everything is reckoned. */
  readonly day: string;
  readonly dayHelp: string;
  readonly people: string;
  /** Of a person: looks, and the day of the last. */
  readonly seen: (looks: number, last: string | undefined) => string;
  readonly remove: (name: string) => string;
  readonly removed: (name: string) => string;
  readonly opened: (n: number) => string;
  readonly nobody: string;
  readonly otherKey: (name: string, key: string) => string;
  readonly conflicts: (n: number) => string;
  readonly ready: string;
  readonly readySays: string;
  readonly readyOf: (n: number, all: number) => string;
  readonly teach: string;
  readonly teachSays: string;
  readonly teachNone: string;
  readonly wrongOf: (wrong: number, n: number) => string;
  readonly likely: (low: string, high: string) => string;
  readonly alarms: (n: number) => string;
  readonly readsWrong: (character: string) => string;
  readonly missed: (plant: string) => string;
  readonly avoid: string;
  readonly avoidSays: string;
  readonly avoidNone: (least: number) => string;
  readonly keySays: string;
  readonly agree: string;
  readonly agreeSays: string;
  readonly agreeNone: string;
  readonly agreeAlone: string;
  readonly nothingShared: (pairs: string) => string;
  readonly pair: (one: string, other: string) => string;
  readonly two: string;
  readonly shared: string;
  readonly same: string;
  readonly beyondChance: string;
  readonly noKappa: string;
  readonly cover: string;
  readonly coverSays: string;
  readonly difference: string;
  readonly limits: string;
  /** `n` carries its sign. */
  readonly points: (n: string) => string;
  readonly tooFew: string;
  readonly take: string;
  readonly csvPlants: string;
  readonly csvAttempts: string;
  readonly print: string;
  readonly unnamed: (n: number) => string;
  readonly learn: string;
}
