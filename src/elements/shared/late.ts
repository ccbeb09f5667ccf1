// The parts that come after the first question is on the screen.
// (The one place where shared leans on single elements: both elements that hold a key bring them.)

const loaders = {
  verdict: () => import('../verdict/define.ts'),
  guidance: () => import('../guidance/define.ts'),
  names: () => import('../names/define.ts'),
} satisfies Readonly<Record<string, () => Promise<unknown>>>;

export type LatePart = keyof typeof loaders;
export const LATE = Object.keys(loaders) as readonly LatePart[];

const under: Map<LatePart, Promise<unknown>> = new Map();

/** Loads a part and defines it, once; after a failure the next call tries again. */
export async function bring(part: LatePart): Promise<void> {
  const load = under.get(part) ?? loaders[part]();
  under.set(part, load);
  try {
    await load;
  } catch (error) {
    under.delete(part);
    throw error;
  }
}
