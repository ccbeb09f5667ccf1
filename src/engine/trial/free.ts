// The free way: at every step the character expected to tell most for its effort.
import { focusOf } from '../focus.ts';
import { nearestTimes, propose, WORTH_ASKING } from '../gain.ts';
import { meanTimes } from '../standing.ts';
import { NOTHING } from './plants.ts';
import type { Way } from './way.ts';

export const free: Way = {
  id: 'free',
  begin: ({ matrix, gains, observer }) => ({
    next({ from, verdict, asked, month }) {
      const times = nearestTimes(matrix, observer, meanTimes(from));
      const [best] = propose(gains, matrix, focusOf(from, verdict), times, month, asked);
      return best === undefined || best.bits < WORTH_ASKING ? undefined : best.character;
    },
    heard: (character, state) =>
      state === NOTHING ? undefined : { character, states: [state], sureness: 'sure' as const },
  }),
};
