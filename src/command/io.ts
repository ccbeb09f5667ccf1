// What a subcommand may touch of the world outside: handed in, so that tests run in process.
import type { Worker } from 'node:worker_threads';

export interface Io {
  /** Folder from which paths on the command line are meant. */
  readonly cwd: string;
  /** Year-month-day, by which a review is past or not. */
  readonly today: string;
  readonly stdin: AsyncIterable<Uint8Array>;
  readonly stdout: (text: string) => void;
  readonly stderr: (text: string) => void;
  /** Whether each of the two is to be coloured. */
  readonly colour: { readonly stdout: boolean; readonly stderr: boolean };
  /** Draws how far a long run has come, on one line that is drawn over; absent where nobody watches. */
  readonly progress?: (line: string) => void;
  /** Starts a helper that does part of the work beside this process; absent where all is done in it. */
  readonly helper?: (data: unknown) => Worker;
}

/** 0 done; 1 what was read or is to be written is at fault; 2 the command line is; 3 the command itself is. */
export const EXIT = Object.freeze({ done: 0, content: 1, usage: 2, ours: 3 });
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
