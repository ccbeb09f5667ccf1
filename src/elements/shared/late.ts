// The parts that come after the first question is on the screen. The one place where shared leans on single elements:
// both elements that hold a key bring them.

/** Calls `load` until it has worked once, and then no more: without a connection it is tried again at the next call. */
export function untilDone<T>(load: () => Promise<T>): () => Promise<T> {
  let under: Promise<T> | undefined;
  return () => {
    under ??= load().catch((error: unknown) => {
      under = undefined;
      throw error;
    });
    return under;
  };
}

const loaders = {
  trail: untilDone(() => import('../trail/define.ts')),
  standing: untilDone(() => import('../standing/define.ts')),
  question: untilDone(() => import('../question/define.ts')),
  verdict: untilDone(() => import('../verdict/define.ts')),
  guidance: untilDone(() => import('../guidance/define.ts')),
  nearby: untilDone(() => import('../nearby/define.ts')),
  names: untilDone(() => import('../names/define.ts')),
  stream: untilDone(() => import('../stream/define.ts')),
  sheet: untilDone(() => import('../sheet/define.ts')),
  term: untilDone(() => import('../term/define.ts')),
  portrait: untilDone(() => import('../portrait/define.ts')),
  comparison: untilDone(() => import('../comparison/define.ts')),
  report: untilDone(() => import('../report/define.ts')),
  review: untilDone(() => import('../review/define.ts')),
  practice: untilDone(() => import('../practice/define.ts')),
  crew: untilDone(() => import('../crew/define.ts')),
} satisfies Readonly<Record<string, () => Promise<unknown>>>;

export type LatePart = keyof typeof loaders;
export const LATE = Object.keys(loaders) as readonly LatePart[];

/** Loads a part and defines it. */
export const bring = (part: LatePart): Promise<unknown> => loaders[part]();
