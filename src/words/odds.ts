// How sure, in numbers that a person can picture: "about 9 in 10".

/** What to put into the sentence; the bounds keep the words from claiming more than the number. */
export type Odds =
  | { readonly kind: 'about'; readonly of: 10 | 20; readonly number: number }
  | { readonly kind: 'more-than'; readonly of: 100; readonly number: 99 }
  | { readonly kind: 'less-than'; readonly of: 20 | 100; readonly number: 1 };

/** Rounds towards what is less sure: nothing below 99 % is called more than 99 in 100, and none is called certain. */
export function oddsOf(probability: number): Odds {
  if (probability > 0.99) return { kind: 'more-than', of: 100, number: 99 };
  if (probability < 0.01) return { kind: 'less-than', of: 100, number: 1 };
  if (probability < 0.05) return { kind: 'less-than', of: 20, number: 1 };
  if (probability >= 0.95) return { kind: 'about', of: 20, number: 19 };
  return { kind: 'about', of: 10, number: Math.max(1, Math.floor(probability * 10 + 0.05)) };
}
