import { describe, expect, test } from 'vitest';
import { streambank } from '../../tests/support/streambank.ts';
import { type Guidance, type Source, TOPICS, type Topic } from '../key/index.ts';
import { byTopic, firstAndRest } from './topics.ts';

const source = (id: string): Source => ({ id, title: `Title ${id}`, institution: 'A', kind: 'web' });
const sources = new Map(['a', 'b', 'c'].map((id) => [id, source(id)]));
const guidance = (statements: readonly [Topic, string, readonly string[]][]): Guidance => ({
  taxon: 'x',
  reviewed: '2026-11-25',
  statements: statements.map(([topic, text, source]) => ({ topic, text, source })),
});

describe('guidance by topic', () => {
  test('comes in the order in which it is read, whatever the order of the file', () => {
    const groups = byTopic(guidance([...TOPICS].reverse().map((topic) => [topic, topic, ['a']])), sources);
    expect(groups.map((group) => group.topic)).toEqual([...TOPICS]);
  });

  test('numbers the sources of a topic once each, from 1, in the order in which they are met', () => {
    const [group] = byTopic(
      guidance([
        ['do', 'one', ['b', 'a']],
        ['do', 'two', ['c', 'a']],
      ]),
      sources,
    );
    expect(group?.sources.map(({ id }) => id)).toEqual(['b', 'a', 'c']);
    expect(group?.statements.map(({ numbers }) => numbers)).toEqual([
      [1, 2],
      [2, 3],
    ]);
  });

  test('shows a native first why to leave it, and any other plant first what not to do', () => {
    const groups = byTopic(guidance(TOPICS.map((topic) => [topic, topic, ['a']])), sources);
    const first = (status: 'native' | 'invasive') => firstAndRest(groups, status).first.map(({ topic }) => topic);
    expect(first('native')).toEqual(['leave', 'dont', 'do', 'safety', 'who']);
    expect(first('invasive')).toEqual(['dont', 'do', 'safety', 'who']);
  });

  test('of every plant of the demonstration key loses no statement and leaves none without a source', () => {
    const { key } = streambank();
    expect(key.guidance.size).toBeGreaterThan(0);
    for (const [id, found] of key.guidance) {
      const status = key.taxa.find((taxon) => taxon.id === id)?.status ?? 'native';
      const { first, rest } = firstAndRest(byTopic(found, key.sources), status);
      const said = [...first, ...rest].flatMap((group) => group.statements);
      expect(said.map(({ statement }) => statement.text).sort()).toEqual(found.statements.map((s) => s.text).sort());
      for (const { statement, numbers } of said) expect(numbers.length, statement.text).toBe(statement.source.length);
    }
  });
});
