// A lead in words: its own text, or its character and states; and what else its plants show.
import type { Character, Lead, PreparedKey, Said } from '../../key/index.ts';
import { asClause } from '../../words/clause.ts';
import { clauses, type Saying, said } from './said.ts';
import { classWords } from './sizes.ts';

export interface LeadWords {
  /** The character's short name; empty where the lead has a text of its own. */
  readonly label: string;
  readonly title: string;
  /** The bounds of what the states mean, for a measure. */
  readonly size: string;
  readonly also: string;
}

/** Further characters that are told, and the most states one may have; more would bury the lead itself (ours). */
const TOLD = 2;
const FEW = 3;

export function leadWords({ key, characterIndex }: PreparedKey, lead: Lead, saying: Saying): LeadWords {
  const { words, say } = saying;
  const lower = clauses(saying);
  const known = (id: string) => key.characters[characterIndex.get(id) as number] as Character;
  const states = (of: Said) => said(known(of.character), { ...of, sureness: 'sure' }, lower);
  const also = lead.also
    .filter((of) => of.states.length <= FEW)
    .slice(0, TOLD)
    .map((of) => {
      const shown = of.how === 'usually' ? words.couplet.usually(states(of)) : states(of);
      return `${asClause(say(known(of.character).label), saying.language)}: ${shown}`;
    });
  const main: Said | undefined = lead.character ? { character: lead.character, states: lead.states ?? [] } : undefined;
  return {
    label: main && lead.text === undefined ? say(known(main.character).label) : '',
    title: lead.text === undefined ? (main ? states(main) : '') : say(lead.text),
    size: main ? sizeOf(known(main.character), main.states, saying) : '',
    also: also.length > 0 ? words.couplet.also(also.join('; ')) : '',
  };
}

/** The one span of classes of size that follow one another; empty for others. */
function sizeOf(character: Character, ids: readonly string[], { words, language, units }: Saying): string {
  if (character.kind !== 'measure') return '';
  const at = character.states.flatMap(({ id }, i) => (ids.includes(id) ? [i] : []));
  const [first] = at;
  if (first === undefined || at.some((i, n) => i !== first + n)) return '';
  const { from } = character.states[first] as Character['states'][0];
  const { to } = character.states[first + at.length - 1] as Character['states'][0];
  const span = { id: '', label: '', ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }) };
  return classWords(character, span, words.question, language, units);
}
