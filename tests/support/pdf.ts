// Reads a PDF as text, where poppler-utils is installed.
import { spawnSync } from 'node:child_process';

const READER = spawnSync('pdftotext', ['-v']).status === 0;

/** The text of a PDF, a form feed after each page; undefined where nothing reads it here. */
export const pdfText = (file: string): string | undefined =>
  READER ? spawnSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).stdout : undefined;
