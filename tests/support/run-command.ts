// The command, run in this process: words and standard input in; exit code and all it said out.
import { fileURLToPath } from 'node:url';
import { run } from '../../src/command/run.ts';

export const ROOT = fileURLToPath(new URL('../../', import.meta.url));

export interface Ran {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

export interface Around {
  readonly stdin?: string | Iterable<Uint8Array>;
  readonly cwd?: string;
  readonly colour?: boolean;
  readonly today?: string;
  readonly progress?: (line: string) => void;
}

/** Paths are meant from the repository's root unless told otherwise. */
export async function runCommand(words: readonly string[], around: Around = {}): Promise<Ran> {
  const { stdin = '', cwd = ROOT, colour = false, today = '2026-11-25', progress } = around;
  const said = { stdout: '', stderr: '' };
  const code = await run(words, {
    cwd,
    today,
    stdin: chunks(typeof stdin === 'string' ? [new TextEncoder().encode(stdin)] : stdin),
    stdout: (text) => {
      said.stdout += text;
    },
    stderr: (text) => {
      said.stderr += text;
    },
    colour: { stdout: colour, stderr: colour },
    ...(progress ? { progress } : {}),
  });
  return { code, ...said };
}

async function* chunks(bytes: Iterable<Uint8Array>) {
  yield* bytes;
}
