// The table of subcommands, in the order in which help tells them.
import { bundle } from './bundle.ts';
import { check } from './check.ts';
import type { Command } from './command.ts';
import { couplets } from './couplets.ts';
import { draw } from './draw.ts';
import { handout } from './handout.ts';
import { identify } from './identify.ts';
import { learn } from './learn.ts';
import { newKey } from './new.ts';
import { rehearse } from './rehearse.ts';
import { sheet } from './sheet.ts';
import { trial } from './trial.ts';

export const COMMANDS: readonly Command[] = [
  newKey,
  check,
  bundle,
  draw,
  couplets,
  identify,
  sheet,
  handout,
  trial,
  learn,
  rehearse,
];
