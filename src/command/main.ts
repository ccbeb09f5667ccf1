// The process around a run: its streams, its exit code, a reader who closes the pipe early, and its helpers.
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { codeOf } from './files.ts';
import { EXIT, type Io } from './io.ts';
import { takesColour } from './paint.ts';
import { run } from './run.ts';
import { serve } from './trial/helper.ts';

/** Writes to a stream until it breaks. A reader that has seen enough (`| head`) is no fault. */
function writer(stream: NodeJS.WriteStream): (text: string) => void {
  let broken = false;
  stream.on('error', (error) => {
    if (!broken && codeOf(error) !== 'EPIPE') {
      process.exitCode = EXIT.content;
      if (stream !== process.stderr) process.stderr.write(`leadwort: could not print: ${error.message}\n`);
    }
    broken = true;
  });
  return (text) => {
    if (!broken) stream.write(text);
  };
}

/** The day where this runs, as 2026-11-25. */
function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

/** One line on a terminal, drawn over; an empty one wipes it. */
const progress = (line: string): void => {
  process.stderr.write(`\r\u001b[K${line}`);
};

async function main(): Promise<void> {
  const io: Io = {
    cwd: process.cwd(),
    today: today(),
    // Opened only when it is read: an open one may keep the process waiting.
    get stdin() {
      return process.stdin;
    },
    stdout: writer(process.stdout),
    stderr: writer(process.stderr),
    colour: { stdout: takesColour(process.stdout), stderr: takesColour(process.stderr) },
    ...(process.stderr.isTTY ? { progress } : {}),
    // This very file: the command is one.
    helper: (data) => new Worker(new URL(import.meta.url), { workerData: data }),
  };
  const code = await run(process.argv.slice(2), io);
  // What could not be printed may have set it already.
  process.exitCode = code === EXIT.done ? (process.exitCode ?? code) : code;
}

if (isMainThread) await main();
else if (parentPort) serve(parentPort, workerData);
