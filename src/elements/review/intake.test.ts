import { describe, expect, test } from 'vitest';
import { aFind } from '../../../tests/support/finds.ts';
import { writeFind } from '../../report/find/index.ts';
import { enteredFor } from './entered.ts';
import { takeIn } from './intake.ts';

const SECOND = '3f0d6c5e-5a51-4a0e-9d0b-3f6f5f7d0a02';
const first = aFind();
const second = aFind({ id: SECOND });
const coming = (name: string, text: string | undefined) => ({ name, text });

describe('what comes in', () => {
  test('is added behind what is open, and what is broken or missing is told by its name', () => {
    const { finds, faults, ids } = takeIn(
      [first],
      [coming('gone', undefined), coming('broken', '{'), coming('b.json', writeFind(second))],
    );
    expect(finds).toEqual([first, second]);
    expect(ids).toEqual([SECOND]);
    expect(faults.map(({ name }) => name)).toEqual(['gone', 'broken']);
    expect(faults[0]).not.toHaveProperty('wrong');
    expect(faults[1]?.wrong).not.toBe('');
  });

  test('a newer copy of what is open takes its place', () => {
    const newer = { ...first, remarks: 'mown since' };
    expect(takeIn([first, second], [coming('a.json', writeFind(newer))]).finds).toEqual([newer, second]);
  });

  test('nothing leaves all as it was', () => {
    const open = [first];
    expect(takeIn(open, []).finds).toBe(open);
  });
});

describe('what stands in the fields', () => {
  const review = { status: 'confirmed', taxon: 'arundo-donax', by: 'R. Invented', date: '2026-09-20' } as const;
  const entered = { status: '', taxon: '', by: 'T. Example', remarks: 'look again', wanted: [] } as const;

  test('is what was entered, else the review, else the name of whoever reviewed last', () => {
    const reviewed = { ...first, review };
    expect(enteredFor(reviewed, new Map([[first.id, entered]]))).toEqual(entered);
    expect(enteredFor(reviewed, new Map())).toMatchObject({ status: 'confirmed', by: 'R. Invented', remarks: '' });
    expect(enteredFor(second, new Map([[first.id, entered]]))).toMatchObject({ status: '', by: 'T. Example' });
  });
});
