// Colour for a terminal, and nothing at all elsewhere. Words carry the meaning; colour only finds them faster.
import { styleText } from 'node:util';

const LOOKS = {
  heading: ['bold'],
  name: ['bold'],
  good: ['green'],
  warn: ['yellow'],
  stop: ['bold', 'red'],
  quiet: ['dim'],
} as const;

export type Paint = (look: keyof typeof LOOKS, text: string) => string;

export function painter(colour: boolean): Paint {
  return colour ? (look, text) => styleText([...LOOKS[look]], text, { validateStream: false }) : (_, text) => text;
}

/** Whether Node would colour what goes to this stream: a terminal, unless NO_COLOR or FORCE_COLOR say otherwise. */
export const takesColour = (stream: NodeJS.WriteStream): boolean => styleText('bold', 'x', { stream }) !== 'x';
