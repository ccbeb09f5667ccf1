import { html } from 'lit';
import { describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { expectAccessible } from '../../../tests/support/a11y.ts';
import { english, held } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { expectPolicyProof } from '../../../tests/support/policy.ts';
import { answered } from '../../../tests/support/streambank.ts';
import type { SessionStore } from '../../session/index.ts';
import { asClause } from '../../words/clause.ts';
import { es } from '../../words/es.ts';
import { clauseOf, joined } from '../shared/clause.ts';
import './define.ts';

async function drawn(store: SessionStore, settings = english) {
  const { part, holder, root } = await held(html`<leadwort-trail></leadwort-trail>`, store, settings);
  return {
    part,
    holder,
    root,
    line: () => root.querySelector('.line')?.textContent?.replace(/\s+/g, ' ').trim(),
    details: () => root.querySelector('details') as HTMLDetailsElement,
    steps: () =>
      [...root.querySelectorAll('li')].map((li) => li.querySelector('.what')?.textContent?.replace(/\s+/g, ' ')),
    button: (name: string) =>
      [...root.querySelectorAll('button')].find(
        (one) => one.textContent?.replace(/\s+/g, ' ').trim() === name,
      ) as HTMLButtonElement,
  };
}

const walk = () =>
  answered({ habitat: 'moist-bank', height: 'waist', 'stem-branching': 'unbranched', light: 'full-sun' });

describe('the line of words', () => {
  test('reads as one sentence, in the order of the answers', async () => {
    const store = answered({ 'growth-form': ['tall-cane', 'grass'], habitat: 'moist-bank', height: 'waist' });
    const { line } = await drawn(store);
    expect(line()).toBe('a tall cane or reed or a grass, on the damp bank, height: up to the waist');
  });

  test('says what was looked at where the answer alone would not tell', () => {
    const branching = { kind: 'choice' } as Parameters<typeof clauseOf>[0];
    expect(clauseOf(branching, 'Branching', 'no', 'en')).toBe('branching: no');
    expect(clauseOf(branching, 'Kind of plant', 'a tall cane or reed', 'en')).toBe('a tall cane or reed');
    expect(asClause('A tall cane', 'en')).toBe('a tall cane');
    expect(asClause('V-shaped', 'en')).toBe('V-shaped');
  });

  test('sets answers apart by semicolons where one of them has a comma', () => {
    expect(joined(['on the damp bank', 'yes, a wedge'])).toBe('on the damp bank; yes, a wedge');
    expect(joined(['on the damp bank', 'a grass'])).toBe('on the damp bank, a grass');
  });

  test('is cut after a few', async () => {
    const store = answered({
      habitat: 'moist-bank',
      height: 'waist',
      light: 'full-sun',
      'growth-form': 'grass',
      'leaf-tip': 'down',
    });
    store.request('answer', { answer: { character: 'sap', skipped: true } });
    const { line } = await drawn(store);
    expect(line()).toMatch(/and 1 more$/);
  });

  test('of an empty trail takes no room from the first question', async () => {
    const { part, root } = await drawn(answered({}));
    expect(root.querySelector('details')).toBeNull();
    expect(root.textContent).toContain('Nothing');
    expect(part.offsetHeight).toBe(0);
    await expectAccessible(part);
  });
});

describe('the list', () => {
  test('has every answer in words, with how sure it is, and what was not seen', async () => {
    const store = answered({ habitat: 'moist-bank' });
    store.request('answer', { answer: { character: 'height', value: 7, unit: 'ft', sureness: 'guess' } });
    store.request('answer', { answer: { character: 'sap', skipped: true } });
    const { steps } = await drawn(store);
    expect(steps()).toEqual(['Where it stands: on the damp bank (sure)', 'Height: 7 ft (a guess)', 'Sap: not seen']);
  });

  test('writes a month as its language does', async () => {
    const { steps } = await drawn(answered({ 'flowering-month': ['jul', 'aug'] }));
    expect(steps()).toEqual(['Month of flowering: July or August (sure)']);
  });

  test('opens an answer to be changed and closes', async () => {
    const store = walk();
    const { details, button, part } = await drawn(store);
    details().open = true;
    button('Change: Height').click();
    await part.updateComplete;
    expect(store.snapshot.question).toMatchObject({ character: 'height', reason: 'changing', number: 2 });
    expect(details().open).toBe(false);
    expect(store.snapshot.trail).toHaveLength(4);
  });

  test('takes an answer back and leaves the rest, the focus on what follows', async () => {
    const store = walk();
    const { details, button, part, root } = await drawn(store);
    details().open = true;
    button('Take back: Height').click();
    await part.updateComplete;
    expect(store.snapshot.trail.map(({ character }) => character)).toEqual(['habitat', 'stem-branching', 'light']);
    expect(details().open).toBe(true);
    expect(root.activeElement).toBe(button('Change: Branching'));
  });

  test('loses nothing of the focus when the last answer goes', async () => {
    const { button, part, root, details } = await drawn(answered({ light: 'full-sun' }));
    details().open = true;
    button('Take back: Light').click();
    await part.updateComplete;
    expect(root.activeElement?.textContent).toContain('Nothing looked at yet.');
    await expectAccessible(part);
  });

  test('is worked by keyboard', async () => {
    const store = walk();
    const { details, root, part } = await drawn(store);
    await userEvent.tab();
    await userEvent.keyboard(' ');
    expect(details().open).toBe(true);
    await userEvent.tab();
    expect(root.activeElement?.textContent).toContain('Change');
    await userEvent.tab();
    await userEvent.keyboard('{Enter}');
    await part.updateComplete;
    expect(store.snapshot.trail).toHaveLength(3);
  });

  test('speaks Spanish', async () => {
    const { steps, root } = await drawn(walk(), { ...english, words: es, language: 'es' });
    expect(steps()[0]).toContain('(con seguridad)');
    expect([...root.querySelectorAll('button')].map((one) => one.textContent?.trim().split(':')[0])).toContain(
      'Quitar',
    );
  });

  test('meets no barrier that can be found by a machine, in forced colours and right to left too', async () => {
    const { details, part, holder } = await drawn(walk());
    await expectAccessible(part);
    details().open = true;
    await expectAccessible(part);
    await withMedia({ forcedColors: 'active' }, () => expectAccessible(part));
    holder.dir = 'rtl';
    await expectAccessible(part);
    expectPolicyProof(part);
  });
});
