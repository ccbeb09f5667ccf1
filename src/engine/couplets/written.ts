// Couplets written by hand: what is wrong with them, seen from the matrix.
import type { KeyCharacter, KeyProblem } from './problem.ts';

/** Where a written lead goes: on to a couplet, to taxa by index, or to what is still to be built. */
export type Goal = { readonly couplet: number } | { readonly taxa: readonly number[] } | 'build';

export interface WrittenLead {
  /** Index into the problem's characters, and the states meant; absent when the lead is words only. */
  readonly character?: number;
  readonly states?: readonly number[];
  readonly to: Goal;
}
export interface WrittenCouplet {
  readonly number: number;
  readonly leads: readonly WrittenLead[];
}

/** Couplets and leads by their place in the list, from 0. */
export type Fault =
  /** Two couplets have one number; the later one is named. */
  | { readonly kind: 'same-number'; readonly couplet: number }
  /** A lead goes on to a couplet that is not there. */
  | { readonly kind: 'dangling'; readonly couplet: number; readonly lead: number }
  /** A lead goes back to a couplet from which one comes to it. */
  | { readonly kind: 'cycle'; readonly couplet: number; readonly lead: number }
  /** No lead goes on to this couplet. */
  | { readonly kind: 'unreached-couplet'; readonly couplet: number }
  /** Every plant that comes here may follow every lead. */
  | { readonly kind: 'separates-nothing'; readonly couplet: number }
  /** The taxon is named below this lead, but never shows what the lead says. */
  | { readonly kind: 'contradicts'; readonly couplet: number; readonly lead: number; readonly taxon: number }
  /** Some plants of the taxon come here and fit no lead. */
  | { readonly kind: 'fits-no-lead'; readonly couplet: number; readonly taxon: number }
  /** No lead names the taxon. */
  | { readonly kind: 'not-named'; readonly taxon: number }
  /** The taxon is named, but no plant of it gets there by what it shows. */
  | { readonly kind: 'unreached'; readonly taxon: number };

/** Which states of which characters are still possible, and of which taxa: what a way through written couplets leaves. */
export interface Arrival {
  readonly couplet: number;
  readonly lead: number;
  /** One for each character of the problem, as bits. */
  readonly states: readonly number[];
  readonly taxa: readonly number[];
}

export interface WrittenCheck {
  readonly faults: readonly Fault[];
  /** Everyone who follows a lead that is still to be built, once for each way there. */
  readonly arrivals: readonly Arrival[];
}

/**
 * Checks written couplets, the first of which is the start. A taxon follows every lead whose states it may show; leads of
 * words only are followed by the taxa named below them. `strays` (states that a taxon shows too seldom to count) contradict
 * nothing.
 */
export function checkWritten(problem: KeyProblem, couplets: readonly WrittenCouplet[]): WrittenCheck {
  const at = new Map<number, number>();
  const faults: Fault[] = [];
  couplets.forEach(({ number }, couplet) => {
    if (at.has(number)) faults.push({ kind: 'same-number', couplet });
    else at.set(number, couplet);
  });
  const graph = new Graph(couplets, at, faults);
  const walk = new Walk(problem, couplets, graph);
  if (couplets.length > 0) walk.from(0);
  return { faults: [...faults, ...walk.faults()], arrivals: walk.arrivals };
}

/** Where the leads go, with leads that go nowhere or in a circle cut off, and the taxa named below each couplet. */
class Graph {
  readonly #next = new Map<string, number>();
  readonly #named = new Map<number, ReadonlySet<number> | 'any'>();
  readonly #couplets: readonly WrittenCouplet[];

  constructor(couplets: readonly WrittenCouplet[], at: ReadonlyMap<number, number>, faults: Fault[]) {
    this.#couplets = couplets;
    const state = new Map<number, 'open' | 'done'>();
    const visit = (couplet: number): void => {
      state.set(couplet, 'open');
      couplets[couplet]?.leads.forEach(({ to }, lead) => {
        if (to === 'build' || 'taxa' in to) return;
        const next = at.get(to.couplet);
        if (next === undefined) faults.push({ kind: 'dangling', couplet, lead });
        else if (state.get(next) === 'open') faults.push({ kind: 'cycle', couplet, lead });
        else {
          this.#next.set(`${couplet} ${lead}`, next);
          if (!state.has(next)) visit(next);
        }
      });
      state.set(couplet, 'done');
    };
    if (couplets.length > 0) visit(0);
    couplets.forEach(({ number }, couplet) => {
      if (state.has(couplet) || at.get(number) !== couplet) return;
      faults.push({ kind: 'unreached-couplet', couplet });
    });
  }

  next(couplet: number, lead: number): number | undefined {
    return this.#next.get(`${couplet} ${lead}`);
  }

  /** Taxa named below a lead; `any` when something is still to be built there. */
  below(couplet: number, lead: number): ReadonlySet<number> | 'any' {
    const to = this.#couplets[couplet]?.leads[lead]?.to;
    if (to === 'build') return 'any';
    if (to !== undefined && 'taxa' in to) return new Set(to.taxa);
    const next = this.next(couplet, lead);
    return next === undefined ? new Set() : this.under(next);
  }

  under(couplet: number): ReadonlySet<number> | 'any' {
    const made = this.#named.get(couplet);
    if (made !== undefined) return made;
    const all = (this.#couplets[couplet]?.leads ?? []).map((_, lead) => this.below(couplet, lead));
    const named = all.some((one) => one === 'any') ? 'any' : new Set(all.flatMap((one) => [...(one as Set<number>)]));
    this.#named.set(couplet, named);
    return named;
  }
}

/** Sends every taxon through the couplets by what it may show. */
class Walk {
  readonly arrivals: Arrival[] = [];
  readonly #problem: KeyProblem;
  readonly #couplets: readonly WrittenCouplet[];
  readonly #graph: Graph;
  /** For each couplet that plants come to: whether some lead is ever closed to one of them. */
  readonly #parts = new Map<number, boolean>();
  readonly #reached = new Set<number>();
  readonly #found = new Map<string, Fault>();
  /** Couplets with what came to them: ways that meet are walked on only once. */
  readonly #walked = new Set<string>();

  constructor(problem: KeyProblem, couplets: readonly WrittenCouplet[], graph: Graph) {
    this.#problem = problem;
    this.#couplets = couplets;
    this.#graph = graph;
  }

  from(start: number): void {
    this.#visit(
      start,
      this.#problem.characters.map(({ states }) => 2 ** states - 1),
      this.#problem.taxa.map((_, t) => t),
    );
    this.#couplets.forEach(({ leads }, couplet) => {
      for (const [lead, one] of leads.entries()) this.#contradictions(one, couplet, lead);
    });
  }

  faults(): Fault[] {
    const named = this.#couplets.length > 0 ? this.#graph.under(0) : new Set<number>();
    this.#problem.taxa.forEach((_, taxon) => {
      if (named !== 'any' && !named.has(taxon)) this.#note({ kind: 'not-named', taxon });
      else if (!this.#reached.has(taxon)) this.#note({ kind: 'unreached', taxon });
    });
    for (const [couplet, parts] of this.#parts) if (!parts) this.#note({ kind: 'separates-nothing', couplet });
    return [...this.#found.values()];
  }

  #note(fault: Fault): void {
    this.#found.set(JSON.stringify(fault), fault);
  }

  #contradictions({ character, states }: WrittenLead, couplet: number, lead: number): void {
    const named = this.#graph.below(couplet, lead);
    if (character === undefined || named === 'any') return;
    for (const taxon of named)
      if (!this.#shows(taxon, character, bitsOf(states), true))
        this.#note({ kind: 'contradicts', couplet, lead, taxon });
  }

  #visit(couplet: number, open: readonly number[], taxa: readonly number[]): void {
    const id = `${couplet} ${open} ${taxa}`;
    if (this.#walked.has(id)) return;
    this.#walked.add(id);
    const leads = this.#couplets[couplet]?.leads ?? [];
    const going = leads.map((lead, k) => {
      if (lead.character !== undefined) {
        const bits = bitsOf(lead.states) & (open[lead.character] as number);
        return taxa.filter((t) => this.#shows(t, lead.character as number, bits, false));
      }
      const named = this.#graph.below(couplet, k);
      return named === 'any' ? [...taxa] : taxa.filter((t) => named.has(t));
    });
    if (taxa.length > 1) {
      const parts = going.some((some) => some.length < taxa.length);
      this.#parts.set(couplet, (this.#parts.get(couplet) ?? false) || parts);
    }
    for (const taxon of taxa)
      if (!going.some((some) => some.includes(taxon))) this.#note({ kind: 'fits-no-lead', couplet, taxon });
    leads.forEach(({ character, states, to }, lead) => {
      const arriving = going[lead] as number[];
      if (arriving.length === 0) return;
      const left = open.map((bits, c) => (c === character ? bits & bitsOf(states) : bits));
      if (to === 'build') {
        this.arrivals.push({ couplet, lead, states: left, taxa: arriving });
        for (const taxon of arriving) this.#reached.add(taxon);
      } else if ('taxa' in to) for (const taxon of to.taxa) this.#arrive(taxon, arriving);
      else {
        const next = this.#graph.next(couplet, lead);
        if (next !== undefined) this.#visit(next, left, arriving);
      }
    });
  }

  #arrive(taxon: number, arriving: readonly number[]): void {
    if (arriving.includes(taxon)) this.#reached.add(taxon);
  }

  /** Whether a taxon may show one of these states; where nothing is known or the character means nothing, it may. */
  #shows(taxon: number, c: number, states: number, seldom: boolean): boolean {
    const { shares, strays, unknown } = this.#problem.characters[c] as KeyCharacter;
    const p = shares[taxon];
    if (p === undefined || p === 'absent' || unknown.has(taxon)) return states !== 0;
    const some = (of: readonly number[]) => of.some((x, s) => x > 0 && (states & (1 << s)) !== 0);
    return some(p) || (seldom && some(strays?.[taxon] ?? []));
  }
}

const bitsOf = (states: readonly number[] | undefined): number =>
  (states ?? []).reduce((bits, state) => bits | (1 << state), 0);
