// A simulated technician: recalls, mixes up look-alikes, misreads characters, and learns from what is told.
import { Random } from '../../engine/trial/random.ts';
import type { PreparedKey } from '../../key/index.ts';
import { judge, pairItem, UNSURE } from '../judge/judge.ts';
import { alike } from '../task/near.ts';
import type { Reply, Task } from '../types.ts';
import type { Memory } from './memory.ts';

/** Chance of taking a known plant for a look-alike in sight, while the two were never told apart (ours). */
const FOOLED = 0.35;
/** How much of a novice's misreading is unlearnt by a character that is well known (ours). */
const UNLEARNT = 0.8;
/** Seconds that a task and what is told after it take (ours). */
const SECONDS = 12;
const TOLD = 6;

export class SimulatedLearner {
  readonly memory: Memory;
  readonly #prepared: PreparedKey;
  readonly #random: Random;
  readonly #lookalikes: ReadonlySet<string>;

  constructor(prepared: PreparedKey, seed: number, memory: Memory) {
    this.memory = memory;
    this.#prepared = prepared;
    this.#random = new Random(seed, 31);
    this.#lookalikes = new Set(prepared.key.lookalikes.map(({ taxa }) => pairItem(...taxa)));
  }

  /** Replies to a task and learns from what is told; a test tells nothing. */
  reply(task: Task): Reply {
    const { said, sureness } = this.#say(task);
    this.memory.wait(SECONDS);
    const reply = { said, seconds: SECONDS, ...(said === UNSURE ? {} : { sureness }) };
    this.#learn(task, reply);
    this.memory.wait(TOLD);
    return reply;
  }

  /** Chance that a specimen of the plant is named rightly among these, and that it is taken for each of the others. */
  chances(truth: string, options: readonly string[]): ReadonlyMap<string, number> {
    const known = this.memory.recall(`taxon:${truth}`);
    const others = options.filter((id) => id !== truth);
    const fooled = new Map(
      others.map((id) => {
        const named = this.#lookalikes.has(pairItem(truth, id));
        return [id, named ? (FOOLED * (1 - this.memory.recall(pairItem(truth, id)))) / others.length : 0];
      }),
    );
    const away = [...fooled.values()].reduce((a, b) => a + b, 0);
    // Who does not recall the name guesses, the likelier plant the more often; some others are known not to be it.
    const weights = new Map(
      options.map((id) => [
        id,
        id === truth ? 1 : alike(this.#prepared, truth, id) ** 2 * (1 - this.memory.recall(`taxon:${id}`)),
      ]),
    );
    const total = [...weights.values()].reduce((a, b) => a + b, 0);
    return new Map(
      options.map((id) => {
        const guessed = ((weights.get(id) as number) / total) * (1 - known);
        return [id, guessed + known * (id === truth ? 1 - away : (fooled.get(id) as number))];
      }),
    );
  }

  #say(task: Task): { said: string; sureness: NonNullable<Reply['sureness']> } {
    const { truth, options, specimen } = task;
    if (task.kind === 'read') {
      const c = this.#prepared.characterIndex.get(task.character ?? '') ?? -1;
      const misread = this.#prepared.key.characters[c]?.misread ?? 0;
      const known = this.memory.recall(task.item);
      const wrong = this.#random.next() < misread * (1 - UNLEARNT * known);
      const others = options.filter((id) => id !== truth);
      const said = wrong && others.length > 0 ? (others[this.#random.below(others.length)] as string) : truth;
      return { said, sureness: known > 0.5 ? 'sure' : 'think' };
    }
    const status = (id: string) => this.#prepared.key.taxa[this.#prepared.taxonIndex.get(id) ?? -1]?.status ?? '';
    const plants = task.kind === 'standing' ? this.#near(specimen.taxon) : options;
    const chances = this.chances(specimen.taxon, plants);
    const believed = plants[this.#random.pick(plants.map((id) => chances.get(id) as number))] ?? truth;
    const known = this.memory.recall(`taxon:${believed}`);
    const sureness = known > 0.7 ? 'sure' : known > 0.3 ? 'think' : 'guess';
    return { said: task.kind === 'standing' ? status(believed) : believed, sureness };
  }

  /** The plant itself and its named look-alikes: what a plant without a list to choose from is taken for. */
  #near(taxon: string): string[] {
    const named = this.#prepared.key.lookalikes.flatMap(({ taxa: [a, b] }) =>
      a === taxon ? [b] : b === taxon ? [a] : [],
    );
    return [taxon, ...named.slice(0, 3)];
  }

  #learn(task: Task, reply: Reply): void {
    const { taxon } = task.specimen;
    this.memory.meet(task.item);
    if (task.kind === 'read') return;
    if (task.item !== `taxon:${taxon}`) this.memory.meet(`taxon:${taxon}`);
    const { decided } = judge(this.#prepared, task, reply);
    if (decided === undefined) return;
    const rival = this.#prepared.taxonIndex.has(reply.said) && reply.said !== taxon ? reply.said : undefined;
    const shown = rival ?? task.options.find((id) => id !== taxon && this.#prepared.taxonIndex.has(id));
    if (shown !== undefined && task.item !== pairItem(taxon, shown)) this.memory.meet(pairItem(taxon, shown));
  }
}
