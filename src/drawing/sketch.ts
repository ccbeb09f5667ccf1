// How a drawing of a state is asked for and what comes back.
import type { Drawing, Unit } from '../key/index.ts';

/** A state or a class of size, as far as a drawing of it depends on it. */
export interface Form {
  /** Name of the form; for a class of size its id. */
  readonly form: string;
  /** Classes of size: values from `from` (0 for the first) up to `to` (absent for the last), in `unit`. */
  readonly from?: number;
  readonly to?: number;
  readonly unit?: Unit;
}

export interface Sketch {
  readonly drawing: Drawing;
  /** What is to be seen on it, in a sentence. */
  readonly alt: { readonly en: string; readonly es: string };
}

/** Draws the forms of one role that a character can have; undefined for a form it does not know. */
export interface SketchBook {
  readonly role: string;
  /** Names of the forms; empty for a role of sizes, which are drawn from their bounds. */
  readonly forms: readonly string[];
  readonly sketch: (form: Form) => Sketch | undefined;
}
