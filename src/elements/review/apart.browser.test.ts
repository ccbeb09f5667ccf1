import { html } from 'lit';
import { expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { aFind } from '../../../tests/support/finds.ts';
import { english, expectSound, type Held, held, spanish } from '../../../tests/support/held.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { answered, streambank } from '../../../tests/support/streambank.ts';
import type { Find } from '../../report/find/index.ts';
import './define.ts';
import type { LeadwortReview } from './review.ts';

async function apart(find: Find, settings = english): Promise<{ part: Held<LeadwortReview>; board: ShadowRoot }> {
  // Another month, other answers: those of the person in front of the page are not the reporter's.
  const store = answered({ 'leaf-base-mark': 'none' }, 1);
  const part = await held<LeadwortReview>(html`<leadwort-review .finds=${[find]}></leadwort-review>`, store, settings);
  const board = () => part.root.querySelector('leadwort-comparison')?.shadowRoot;
  await expect.poll(() => board()?.querySelectorAll('.row').length).toBeGreaterThan(5);
  return { part, board: board() as ShadowRoot };
}
const label = (id: string) => streambank().key.characters.find((one) => one.id === id)?.label as string;
const row = (board: ShadowRoot, id: string) => {
  const found = [...board.querySelectorAll('.row')].find(
    (one) => one.querySelector('[role=heading]')?.textContent?.trim() === label(id),
  );
  if (!found) throw new Error(`no row ${id}`);
  return found.textContent?.replaceAll(/\s+/g, ' ') ?? '';
};
const trail: Find['trail'] = [
  { character: 'leaf-base', label: 'Base', states: ['ears'], sureness: 'think', seconds: 14, words: 'Ears' },
  { character: 'stem-thickness', label: 'Stem', skipped: true, words: 'not seen' },
  { character: 'growth-form', label: 'Kind', states: ['tall-cane'], sureness: 'sure', words: 'A cane' },
  { character: 'height', label: 'Height', states: ['above'], sureness: 'sure', words: 'Tall' },
];
const photo = aFind().photos[0] as Find['photos'][number];
const find = aFind({ trail, photos: [{ ...photo, wants: 'collar' }] });

test('the candidates stand side by side with what the reporter said of each feature, not the reader', async () => {
  const { board } = await apart(find);
  expect(board.querySelectorAll('.plants > .cell')).toHaveLength(3);
  expect(row(board, 'leaf-base')).toContain('Answered: Ears (they think so, 14 s)');
  expect(row(board, 'leaf-base')).toContain('The person saw this');
  expect(row(board, 'stem-thickness')).toContain('Answered: not seen');
  expect(row(board, 'leaf-base-mark')).toContain('Not answered');
  expect(board.textContent).not.toContain('You ');
  // Nothing leads the reader to look at a plant that stands elsewhere.
  expect(board.querySelector('.now, #heading')).toBeNull();
});

test('each feature says which photograph shows it, which could, and what none can', async () => {
  const { board } = await apart(find);
  expect(row(board, 'leaf-base-mark')).toContain(
    'Needs touching. See the photograph “Close up: where the blade meets the stem”.',
  );
  expect(row(board, 'leaf-base')).toContain(
    'A photograph could show it: “One leaf from behind, with the end of its stalk”.',
  );
  expect(row(board, 'underground')).toContain('Below the ground: never dig for it.');
  // The month is the report's (September), not that of the page.
  expect(board.textContent).not.toContain('Not to be seen in');
  const { board: january } = await apart({ ...find, month: 1 });
  expect(january.textContent).toContain('Not to be seen in January.');
});

test.each([360, 1280])('at %i px it is sound, folded and open, in both languages', async (width) => {
  await page.viewport(width, 800);
  for (const settings of [english, await spanish()]) {
    const { part, board } = await apart(find, settings);
    for (const one of board.querySelectorAll('details')) one.open = true;
    await expectSound(part);
    await expectAccessible(part.part);
    expectPolicyProof(part.part);
  }
});

test('typing does not draw the comparison anew', async () => {
  const { part } = await apart(find);
  const comparison = part.find('leadwort-comparison') as HTMLElement & { witness?: unknown };
  const before = comparison.witness;
  const remarks = part.find('#remarks') as HTMLTextAreaElement;
  remarks.value = 'look again';
  remarks.dispatchEvent(new InputEvent('input'));
  await part.part.updateComplete;
  expect(comparison.witness).toBe(before);
});
