// Who helps where: the content of a file of service areas, ready to use.

/** A text by language tag; under the empty tag one that holds for every language. Never empty. */
export type Texts = ReadonlyMap<string, string>;

/** Decimal degrees on WGS 84, longitude first. It may lie beyond 180 where a ring crosses the antimeridian. */
export type Position = readonly [lon: number, lat: number];
/** Closed: its last position is its first. */
export type Ring = readonly Position[];
/** The outer ring counter-clockwise, then holes clockwise. */
export type Polygon = readonly Ring[];

/** One way to reach somebody; at least one of phone, email, form and post is there. */
export interface Contact {
  readonly person?: string;
  readonly phone?: string;
  readonly email?: string;
  /** Address of a form on the web, http or https. */
  readonly form?: string;
  readonly post?: Texts;
  readonly hours?: Texts;
  /** Tags of the languages spoken there. */
  readonly languages: readonly string[];
}

/** A programme and the land it serves. */
export interface Area {
  readonly id: string;
  readonly programme: Texts;
  readonly organisation?: Texts;
  readonly statement?: Texts;
  readonly offers: readonly Texts[];
  readonly contacts: readonly Contact[];
  /** Last day of the programme, YYYY-MM-DD; none: it goes on. */
  readonly until?: string;
  /** Day on which somebody last made sure that all this holds, YYYY-MM-DD. */
  readonly reviewed: string;
  /** Day by which somebody should make sure anew, YYYY-MM-DD. */
  readonly due: string;
  /** Ids of the taxa it is for; none: for any plant. */
  readonly plants?: readonly string[];
  readonly polygons: readonly Polygon[];
}

/** Something to find one's way by on the map: a creek, a road, a town. */
export interface Landmark {
  readonly name: Texts;
  /** A single position is a spot, several are a line. */
  readonly lines: readonly (readonly Position[])[];
}

/** Whom to ask where no area reaches. */
export interface Elsewhere {
  readonly name: Texts;
  readonly statement?: Texts;
  readonly contacts: readonly Contact[];
}

export interface Areas {
  readonly areas: readonly Area[];
  readonly landmarks: readonly Landmark[];
  /** How far from an edge still counts as near, in metres. */
  readonly near: number;
  readonly elsewhere?: Elsewhere;
}
