import { expect, test } from 'vitest';
import { keyFiles } from '../../../tests/support/key-files.ts';
import { readKey } from '../folder.ts';
import { Problems } from '../problem.ts';
import type { Key, Statement } from '../types.ts';
import { checkReadability } from './readability.ts';

const key = readKey(keyFiles('keys/streambank'));
const HARD =
  'Notwithstanding considerable uncertainty regarding evapotranspiration, responsible authorities recommend immediate professional eradication.';
const DIFICIL =
  'No obstante la considerable incertidumbre respecto de la evapotranspiración, las autoridades responsables recomiendan la erradicación profesional inmediata.';

const problemsOf = (of: Key) => {
  const problems = new Problems();
  checkReadability(of, problems);
  return problems.list;
};
const withText = (texts: readonly string[], spanish: Readonly<Record<string, string>>): Key => {
  const statements = texts.map((text): Statement => ({ topic: 'do', text, source: ['memory'] }));
  const taxon = 'arundo-donax';
  return {
    ...key,
    guidance: new Map([[taxon, { taxon, reviewed: '2026-11-25', statements }]]),
    text: new Map([['es', new Map(Object.entries(spanish))]]),
  };
};

test('all advice of the demonstration key is easy to read, in both languages', () => {
  expect(problemsOf(key)).toEqual([]);
});

test('advice that is hard is told by plant and language, at the statement that does most', () => {
  expect(
    problemsOf(withText(['Ask first.', HARD], { 'Ask first.': 'Pregunte primero.', [HARD]: DIFICIL })).map(
      ({ code, file, path, expected, severity }) => ({ code, file, path, expected, severity }),
    ),
  ).toEqual([
    {
      code: 'hard-to-read',
      file: 'guidance.json',
      path: 'entries[0].statements[1]',
      expected: 'advice on Arundo donax that is easy to read in en (Flesch-Kincaid grade at most 7)',
      severity: 'warning',
    },
    {
      code: 'hard-to-read',
      file: 'guidance.json',
      path: 'entries[0].statements[1]',
      expected: 'advice on Arundo donax that is easy to read in es (Fernández Huerta ease at least 70)',
      severity: 'warning',
    },
  ]);
});

test('what is not translated is not measured in that language', () => {
  expect(
    problemsOf(withText(['Ask first.', HARD], {})).map(({ expected }) => / in (\w+) /.exec(expected)?.[1]),
  ).toEqual(['en']);
});

test('a lone statement is the hardest, and scientific names do not count', () => {
  expect(problemsOf(withText([HARD], {}))[0]?.path).toBe('entries[0].statements[0]');
  expect(problemsOf(withText(['Leave Schoenoplectus californicus be. It is good.'], {}))).toEqual([]);
});
