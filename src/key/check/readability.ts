import { show } from '../path.ts';
import type { Problems } from '../problem.ts';
import { isHard, MEASURES } from '../readability/index.ts';
import { translate } from '../text.ts';
import type { Guidance, Key } from '../types.ts';

/**
 * Guidance that is too hard to read, by plant and language: the formulas were made for a hundred words or so, which one
 * topic seldom has. Scientific names are left out, and so are sources, which stand elsewhere.
 */
export function checkReadability(key: Key, problems: Problems): void {
  const names = key.taxa.flatMap(({ name, synonyms }) => [name, ...synonyms]);
  const taxa = new Map(key.taxa.map((taxon) => [taxon.id, taxon.name]));
  for (const language of key.languages) {
    const measure = MEASURES.get(language.split('-')[0] ?? '');
    if (measure === undefined) continue;
    [...key.guidance.values()].forEach((guidance, i) => {
      const texts = textsOf(key, guidance, language);
      const value = measure.of(texts, names);
      if (!isHard(measure, value)) return;
      // The statement without which the rest is easiest.
      const without = texts.map((_, j) =>
        measure.of(
          texts.filter((_, k) => k !== j),
          names,
        ),
      );
      const best = measure.harder === 'more' ? Math.min : Math.max;
      const hardest = texts.length === 1 ? 0 : without.indexOf(best(...without.filter((one) => !Number.isNaN(one))));
      const limit = `${measure.harder === 'more' ? 'at most' : 'at least'} ${measure.limit}`;
      problems.warn(
        'guidance.json',
        ['entries', i, 'statements', hardest],
        'hard-to-read',
        `advice on ${taxa.get(guidance.taxon) ?? guidance.taxon} that is easy to read in ${language} (${measure.name} ${limit})`,
        `${value.toFixed(1)}, most of all for ${show(texts[hardest])}`,
      );
    });
  }
}

/** As far as it is translated: what is not is told of elsewhere. */
const textsOf = (key: Key, { statements }: Guidance, language: string): string[] =>
  statements.flatMap(({ text }) =>
    language === key.languages[0] || key.text.get(language)?.has(text) ? translate(key, language, text) : [],
  );
