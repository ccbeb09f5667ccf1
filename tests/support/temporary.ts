// A folder of a test's own, gone when the test is over.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { ROOT } from './run-command.ts';

export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'leadwort-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A copy of keys/streambank, changed: each change maps the text of one file to another text. Gives the folder around it. */
export function changedKey(changes: Readonly<Record<string, (text: string) => string | Uint8Array>> = {}): string {
  const folder = temporaryFolder();
  cpSync(join(ROOT, 'keys/streambank'), join(folder, 'key'), { recursive: true });
  for (const [file, change] of Object.entries(changes)) {
    const path = join(folder, 'key', file);
    writeFileSync(path, change(readFileSync(path, 'utf8')));
  }
  return folder;
}
