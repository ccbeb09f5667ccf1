import type { Problems } from '../problem.ts';
import type { Key } from '../types.ts';

/** Invasive plants of which it is not said what native plant they are taken for, or what to do about them. */
export function checkInvasiveTold(key: Key, problems: Problems): void {
  const native = new Set(key.taxa.filter(({ status }) => status === 'native').map(({ id }) => id));
  key.taxa.forEach(({ id, name, status }, i) => {
    if (status !== 'invasive') return;
    const pairs = key.lookalikes.filter(({ taxa }) => taxa.includes(id));
    if (!pairs.some(({ taxa }) => taxa.some((other) => native.has(other)))) {
      const expected = `a native look-alike of ${name}, an invasive plant`;
      problems.warn('taxa.json', ['taxa', i], 'no-native-lookalike', expected, 'none');
    }
    if (!key.guidance.has(id)) {
      problems.warn('guidance.json', ['entries'], 'no-guidance', `an entry for ${name}, an invasive plant`, 'none');
    }
  });
}
