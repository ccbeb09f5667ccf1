// What a benchmark is, and what it is given. Every `*.bench.ts` of this folder has one as its default export; run.mjs
// builds each as for production, runs them in turn and puts what they report into RESULTS.md.

export interface Bench {
  readonly title: string;
  /** Measures, and tells what was measured as Markdown, to stand below the title. */
  readonly report: (tools: Tools) => Promise<string>;
}

/** Where work may be run. Each call starts afresh, so that nothing that ran before has trained the compiler. */
export interface Tools {
  /** A folder of the run's own, removed when it ends. */
  readonly folder: string;
  /** Calls an exported function of `NAME.work.ts`, built as for production, in a new process of Node. */
  readonly inNode: <T>(work: string, name: string, ...args: unknown[]) => Promise<T>;
  /** The same in a new page of Chromium. Undefined when there is no browser. */
  readonly inChromium: (<T>(work: string, name: string, ...args: unknown[]) => Promise<T>) | undefined;
  /** Runs a script of this folder with a Python that has numpy and reads the JSON it prints. Undefined without numpy. */
  readonly inPython: (<T>(script: string, ...args: string[]) => Promise<T>) | undefined;
  /** Says on the terminal what is going on. */
  readonly say: (text: string) => void;
}

/** Milliseconds of one run: the least, and the median of all samples. */
export interface Time {
  readonly best: number;
  readonly median: number;
}

/** A Markdown table. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map((_, i) => (i === 0 ? '---' : '---:'))), ...rows.map(line)].join('\n');
}

/** Three digits that count. */
export const digits = (x: number): string => (x >= 100 ? x.toFixed(0) : x.toPrecision(3));
