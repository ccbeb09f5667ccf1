import { checkGlossary, checkPictures, type Pictures } from './album/check.ts';
import type { Term } from './album/types.ts';
import { checkCoupletsInMatrix } from './check/couplets.ts';
import { checkCoverage } from './check/coverage.ts';
import { checkInvasiveTold } from './check/invasive.ts';
import { checkLookalikesInMatrix } from './check/lookalikes.ts';
import { checkSharedNames } from './check/names.ts';
import { checkReadability } from './check/readability.ts';
import { checkReviews } from './check/reviews.ts';
import { checkSeparation } from './check/separation.ts';
import { checkSourcesUsed } from './check/sources.ts';
import { checkTranslations } from './check/translations.ts';
import { type Problem, Problems } from './problem.ts';
import { checkReferences } from './references/index.ts';
import type { Key } from './types.ts';

export interface CheckOptions {
  /** Today as year-month-day; without it nothing is past its review. */
  readonly today?: string;
  /** Months that a review holds. */
  readonly reviewMonths?: number;
  /** A taxon is thin when it has less than this share of the characters that apply to it. */
  readonly knownOfTaxon?: number;
  /** A character is thin when it is known of less than this share of the taxa that it applies to. */
  readonly knownOfCharacter?: number;
  /** The key's glossary; without it no term is missed. */
  readonly glossary?: readonly Term[];
  /** The list of the key's pictures; without it no picture is missed. */
  readonly pictures?: Pictures;
}

/** All ours. */
export const USUAL_CHECKS = Object.freeze({ reviewMonths: 12, knownOfTaxon: 0.5, knownOfCharacter: 1 / 3 });

/**
 * What is wrong with a key (errors; a key from readKey has none) and what the people who keep it should look at
 * (warnings), errors first.
 */
export function checkKey(key: Key, options: CheckOptions = {}): readonly Problem[] {
  const settings = { ...USUAL_CHECKS, ...options };
  const problems = new Problems(Number.POSITIVE_INFINITY);
  checkReferences(key, problems);
  const sound = problems.none;
  checkReviews(key, settings, problems);
  checkInvasiveTold(key, problems);
  checkLookalikesInMatrix(key, problems);
  checkSharedNames(key, problems);
  checkCoverage(key, settings, problems);
  checkTranslations(key, problems);
  checkReadability(key, problems);
  checkSourcesUsed(key, problems, settings.glossary);
  checkSeparation(key, problems);
  if (sound) checkCoupletsInMatrix(key, problems);
  if (settings.glossary) checkGlossary(key, settings.glossary, problems);
  if (settings.pictures) checkPictures(key, settings.pictures, problems);
  return problems.list;
}
