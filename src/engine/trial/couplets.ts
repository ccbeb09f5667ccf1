// The couplet way: from the first couplet on, at each the lead that fits what the person sees; then on freely.
import type { Answer } from '../spec.ts';
import type { Book } from './book.ts';
import { free } from './free.ts';
import { NOTHING } from './plants.ts';
import type { Now, Walk, Way } from './way.ts';

/** A lead by index of character and states, without a character where it is words only. */
export interface WayLead {
  readonly character?: number;
  readonly states: readonly number[];
  /** Place of the next couplet in the list, or ids of the taxa it ends with. */
  readonly to: number | readonly string[];
}
/** The first of a list, which is not empty, is where everyone starts; they must not go in a circle. */
export type WayCouplet = readonly WayLead[];

/** What is walked into and keeps less than this share of the plants' weight was a wrong turn (ours, as on the page). */
const KEEPS = 0.35;

/**
 * Whoever cannot tell, or sees what no lead says, goes where most of the weight is; whoever went wrong carries on from where
 * it is. Whoever comes to the end of the couplets before the plant is settled is asked on freely, as on the page. That a lead
 * also says more than its main character, which helps people to choose, is left out.
 */
export const coupletWay = (couplets: readonly WayCouplet[]): Way => {
  const ends = couplets.map((couplet) => couplet.map((): ReadonlyMap<string, number> | undefined => undefined));
  /** Ids of the taxa that come out below a lead, and in how many places. */
  const below = (couplet: number, lead: number): ReadonlyMap<string, number> => {
    const row = ends[couplet] as (ReadonlyMap<string, number> | undefined)[];
    const known = row[lead];
    if (known) return known;
    const { to } = (couplets[couplet] as WayCouplet)[lead] as WayLead;
    const made = new Map<string, number>();
    const add = (id: string, places: number) => made.set(id, (made.get(id) ?? 0) + places);
    if (typeof to === 'object') for (const id of to) add(id, 1);
    else
      (couplets[to] as WayCouplet).forEach((_, k) => {
        for (const [id, places] of below(to, k)) add(id, places);
      });
    row[lead] = made;
    return made;
  };
  return { id: 'couplets', begin: (book) => new CoupletWalk(couplets, below, book) };
};

type Below = (couplet: number, lead: number) => ReadonlyMap<string, number>;

class CoupletWalk implements Walk {
  readonly #couplets: readonly WayCouplet[];
  readonly #below: Below;
  readonly #taxa: ReadonlyMap<string, number>;
  /** Lead taken at each couplet. */
  readonly #taken = new Map<number, number>();
  /** Couplets that the person could not tell. */
  readonly #open = new Set<number>();
  /** What was said of each character; no states where the person could not tell. */
  readonly #said = new Map<number, readonly number[]>();
  /** The couplet that is asked; undefined beyond the last. */
  #at: number | undefined = 0;
  readonly #beyond: Walk;

  constructor(couplets: readonly WayCouplet[], below: Below, book: Book) {
    const { matrix } = book;
    this.#beyond = free.begin(book);
    this.#couplets = couplets;
    this.#below = below;
    this.#taxa = new Map(matrix.spec.taxa.map(({ id }, t) => [id, t]));
  }

  next(now: Now): number | undefined {
    const { p } = now.from;
    for (;;) {
      const path = this.#path(p);
      const last = path.at(-1);
      const parting = last && this.#isLost(path[0]?.couplet ?? 0, last, p) ? this.#parting(path, p) : undefined;
      if (parting) this.#taken.set(parting.couplet, parting.lead);
      else {
        const to = last === undefined ? 0 : this.#lead(last).to;
        this.#at = typeof to === 'number' ? to : undefined;
        return this.#at === undefined ? this.#beyond.next(now) : this.#character(this.#at);
      }
    }
  }

  heard(character: number, state: number): Answer | undefined {
    if (this.#at === undefined) return this.#beyond.heard(character, state);
    const leads = this.#couplets[this.#at] as WayCouplet;
    const lead = leads.findIndex((one) => one.character === character && one.states.includes(state));
    if (state === NOTHING) this.#said.set(character, []);
    if (lead < 0) {
      this.#open.add(this.#at);
      return undefined;
    }
    this.#taken.set(this.#at, lead);
    const { states } = leads[lead] as WayLead;
    const before = this.#said.get(character) ?? [];
    const both = states.filter((s) => before.includes(s));
    const told = both.length > 0 ? both : states;
    this.#said.set(character, told);
    return { character, states: [...told], sureness: 'sure' };
  }

  /** The couplets passed, down to the one that is to be asked, or to an end. */
  #path(p: Float64Array): { couplet: number; lead: number }[] {
    const path: { couplet: number; lead: number }[] = [];
    for (let couplet: number | undefined = 0; couplet !== undefined; ) {
      const lead = this.#turn(couplet, p);
      if (lead === undefined) return path;
      path.push({ couplet, lead });
      const to: WayLead['to'] = this.#lead({ couplet, lead }).to;
      couplet = typeof to === 'number' ? to : undefined;
    }
    return path;
  }

  /** The lead to follow; undefined while it has to be asked. */
  #turn(couplet: number, p: Float64Array): number | undefined {
    const taken = this.#taken.get(couplet);
    if (taken !== undefined) return taken;
    const character = this.#character(couplet);
    // Words alone are left open: what simulated people would make of them is not in the traits.
    const said = character === undefined ? [] : this.#said.get(character);
    if (this.#open.has(couplet) || said?.length === 0) return this.#heaviest(couplet, p);
    const leads = this.#couplets[couplet] as WayCouplet;
    const fits = leads.flatMap(({ states }, lead) => (said?.some((s) => states.includes(s)) ? [lead] : []));
    return fits.length === 1 ? fits[0] : undefined;
  }

  /** What a couplet asks for; nothing where its leads are words alone. */
  #character(couplet: number): number | undefined {
    return this.#couplets[couplet]?.find(({ character }) => character !== undefined)?.character;
  }

  #lead({ couplet, lead }: { couplet: number; lead: number }): WayLead {
    return this.#couplets[couplet]?.[lead] as WayLead;
  }

  /** Weight below each lead; a taxon that comes out in several places is divided among them. */
  #weights(couplet: number, p: Float64Array): number[] {
    const leads = (this.#couplets[couplet] as WayCouplet).map((_, lead) => this.#below(couplet, lead));
    const all = new Map<string, number>();
    for (const of of leads) for (const [id, places] of of) all.set(id, (all.get(id) ?? 0) + places);
    return leads.map((of) =>
      [...of].reduce((sum, [id, places]) => sum + (this.#p(id, p) * places) / (all.get(id) as number), 0),
    );
  }

  #heaviest(couplet: number, p: Float64Array): number {
    return this.#weights(couplet, p).reduce((best, w, lead, all) => (w > (all[best] as number) ? lead : best), 0);
  }

  #p(id: string, p: Float64Array): number {
    const t = this.#taxa.get(id);
    return t === undefined ? 0 : (p[t] as number);
  }

  #isLost(first: number, here: { couplet: number; lead: number }, p: Float64Array): boolean {
    const sum = (ids: Iterable<string>) => [...new Set(ids)].reduce((total, id) => total + this.#p(id, p), 0);
    const all = (this.#couplets[first] as WayCouplet).flatMap((_, lead) => [...this.#below(first, lead).keys()]);
    return sum(this.#below(here.couplet, here.lead).keys()) < KEEPS * sum(all);
  }

  /** The first couplet at which most of the weight goes another way, with that lead. */
  #parting(path: readonly { couplet: number; lead: number }[], p: Float64Array) {
    for (const { couplet, lead } of path) {
      const heaviest = this.#heaviest(couplet, p);
      if (heaviest !== lead) return { couplet, lead: heaviest };
    }
    return undefined;
  }
}
