// Chance that is handed in: the same seed gives the same draws, in Node and in a browser, whatever ran before.

const rotl = (x: number, by: number): number => (x << by) | (x >>> (32 - by));

/**
 * xoshiro128** 1.1 by D. Blackman and S. Vigna (2018, public domain, xoshiro128starstar.c). Its state is filled from the
 * seed numbers with the mixing step of MurmurHash3 (A. Appleby, public domain, from memory), as is usual for generators
 * that want no two states alike.
 */
export class Random {
  #a: number;
  #b: number;
  #c: number;
  #d: number;

  /** `seed`: any whole numbers; every one of them changes all draws. */
  constructor(...seed: readonly number[]) {
    let hash = 0;
    const mix = (word: number): number => {
      hash = (hash + 0x9e3779b9 + word) | 0;
      hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
      hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
      hash ^= hash >>> 16;
      return hash;
    };
    for (const word of seed) {
      mix(word | 0);
      mix(Math.floor(word / 2 ** 32) | 0);
    }
    this.#a = mix(1);
    this.#b = mix(2);
    this.#c = mix(3);
    // A state of all zeros would never leave it.
    this.#d = mix(4) | 1;
  }

  /** A generator in a known state, to hold it against published draws. */
  static at(a: number, b: number, c: number, d: number): Random {
    const random = new Random();
    random.#a = a | 0;
    random.#b = b | 0;
    random.#c = c | 0;
    random.#d = d | 0;
    return random;
  }

  /** The next 32 bits, 0 to 2^32 - 1. */
  word(): number {
    const result = Math.imul(rotl(Math.imul(this.#b, 5), 7), 9) >>> 0;
    const t = this.#b << 9;
    this.#c ^= this.#a;
    this.#d ^= this.#b;
    this.#b ^= this.#c;
    this.#a ^= this.#d;
    this.#c ^= t;
    this.#d = rotl(this.#d, 11);
    return result;
  }

  /** At least 0 and less than 1. */
  next(): number {
    return this.word() / 2 ** 32;
  }

  /** A whole number from 0 to `n` - 1. */
  below(n: number): number {
    return Math.floor(this.next() * n);
  }

  /** An index, each as often as its weight (0 or more) says; -1 when none weighs anything. */
  pick(weights: ArrayLike<number>): number {
    let total = 0;
    for (let i = 0; i < weights.length; i++) total += weights[i] as number;
    let left = this.next() * total;
    let last = -1;
    for (let i = 0; i < weights.length; i++) {
      const weight = weights[i] as number;
      if (!(weight > 0)) continue;
      last = i;
      left -= weight;
      if (left < 0) return i;
    }
    return last;
  }

  /** A draw from the standard normal (Box & Muller 1958, Ann. Math. Stat. 29: 610-611, from memory). */
  normal(): number {
    const radius = Math.sqrt(-2 * Math.log(1 - this.next()));
    return radius * Math.cos(2 * Math.PI * this.next());
  }
}
