// One parameter of a web address's query, read and written with all others left as they stand, to the last sign.

const pairsOf = (search: string): string[] => search.replace(/^\?/, '').split('&').filter(Boolean);
/** As URLs read it: a plus is a space, and what is no escape stays as it is. */
const read = (pair: string): [name: string, value: string] => [...new URLSearchParams(pair)][0] ?? ['', ''];
const isOf = (name: string) => (pair: string) => read(pair)[0] === name;

/** Value of the first parameter called `name`; undefined where there is none. `search` as of a URL, with its `?`. */
export function parameterIn(search: string, name: string): string | undefined {
  const pair = pairsOf(search).find(isOf(name));
  return pair === undefined ? undefined : read(pair)[1];
}

/** The query with that one parameter in the place it had, else at the end; without it for undefined. */
export function withParameter(search: string, name: string, value: string | undefined): string {
  const pairs = pairsOf(search);
  const mine = isOf(name);
  const at = pairs.findIndex(mine);
  const written = value === undefined ? [] : [`${encodeURIComponent(name)}=${encodeURIComponent(value)}`];
  const before = at < 0 ? pairs : pairs.slice(0, at);
  const after = at < 0 ? [] : pairs.slice(at + 1).filter((pair) => !mine(pair));
  const all = [...before, ...written, ...after];
  return all.length > 0 ? `?${all.join('&')}` : '';
}
