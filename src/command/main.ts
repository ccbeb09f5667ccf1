// The process around a run: its streams, its exit code, and a reader who closes the pipe early.
import { codeOf } from './files.ts';
import { EXIT, type Io } from './io.ts';
import { takesColour } from './paint.ts';
import { run } from './run.ts';

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
};
const code = await run(process.argv.slice(2), io);
// What could not be printed may have set it already.
process.exitCode = code === EXIT.done ? (process.exitCode ?? code) : code;
