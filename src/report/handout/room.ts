// What finds room on one side: what must not be missed always does, the rest in the order of how much it helps.

/** Letters of 11 points to a line of half a page, and what a heading with its gap takes; measured on Letter (ours). */
const LINE = 46;
const HEADING = 1.7;
/** Lines of both columns, with two of the small print below (ours). tests/handout.test.ts prints every plant. */
const LINES = 86;

/** Lines that items of a list take under their heading; none for no items. */
export const linesOf = (items: readonly string[]): number =>
  items.length === 0 ? 0 : items.reduce((sum, item) => sum + Math.ceil(item.length / LINE) + 0.15, HEADING);

/** Counts what is put on the page. */
export class Room {
  #free = LINES;

  /** What must not be missed, whether or not it fits. */
  take(lines: number): void {
    this.#free -= lines;
  }

  /** Whether something else fits; if so it is put there. */
  has(lines: number): boolean {
    if (lines > this.#free) return false;
    this.#free -= lines;
    return true;
  }
}
