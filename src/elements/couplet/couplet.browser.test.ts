import { html } from 'lit';
import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { fiveCouplets, NARROW } from '../../../tests/support/five-couplets.ts';
import { english, expectSound, held, spanish } from '../../../tests/support/held.ts';
import { streambankWith } from '../../../tests/support/streambank.ts';
import { SessionStore } from '../../session/index.ts';
import type { LeadwortEvents } from '../shared/events.ts';
import './define.ts';
import type { LeadwortCouplet } from './couplet.ts';

// Statements as the trade would put them beside each other: invented for these tests.
const withAlso = fiveCouplets.map((couplet) =>
  couplet.number === 1
    ? {
        ...couplet,
        leads: couplet.leads.map((lead, i) => ({
          ...lead,
          also: [
            { character: 'leaf-stalk', states: [i === 0 ? 'sheath' : 'at-edge'], how: 'usually' },
            { character: 'leaf-veins', states: [i === 0 ? 'parallel' : 'feather'], how: 'always' },
          ],
        })),
      }
    : couplet,
);
const key = streambankWith(withAlso);
let store: SessionStore;
beforeEach(() => {
  store = new SessionStore(key, { month: 9 });
});

async function shown(settings = english) {
  const drawn = await held<LeadwortCouplet>(html`<leadwort-couplet></leadwort-couplet>`, store, settings);
  const heading = () => drawn.find('[role=heading]').textContent?.replace(/\s+/g, ' ').trim();
  return {
    ...drawn,
    heading,
    leads: () => drawn.all('.lead'),
    mark: async (index: number) => {
      drawn.all('.lead')[index]?.click();
      await drawn.part.updateComplete;
    },
    press: async (words: string) => {
      drawn.control(words).click();
      await drawn.part.updateComplete;
    },
  };
}

describe('a couplet', () => {
  test('says its number, the part of the plant and the question', async () => {
    const { heading, root } = await shown();
    expect(heading()).toMatch(/^Question 1 · Leaf: .+\?$/);
    expect(root.activeElement).toBeNull();
  });

  test('words each lead from its character and states, and says below what else its plants show', async () => {
    const { leads } = await shown();
    const [narrow] = leads();
    expect(narrow?.querySelector('.label')?.textContent).toContain('Leaf shape');
    expect(narrow?.querySelector('.title')?.textContent).toMatch(/ or /);
    const also = narrow?.querySelector('.detail')?.textContent ?? '';
    expect(also).toMatch(/^Also: .+: usually .+; .+: .+/);
    expect(also.match(/usually/g)).toHaveLength(1);
  });

  test('has the words that its author wrote, where there are any', async () => {
    store.request('lead', { couplet: 1, lead: 0, sureness: 'sure' });
    store.request('lead', { couplet: 2, lead: 0, sureness: 'sure' });
    const { heading, leads } = await shown();
    expect(heading()).toBe('Question 3: Which is more like your plant?');
    expect(leads()[0]?.textContent).toContain('It would cut your hand.');
    expect(leads()[0]?.querySelector('.label')).toBeNull();
  });

  test('asks how sure a person is once a lead is marked, and sends it as an answer with the couplet’s number', async () => {
    const { part, mark, press, heading, root } = await shown();
    const events: LeadwortEvents['leadwort-answer'][] = [];
    part.addEventListener('leadwort-answer', (event) => events.push(event.detail));
    await mark(0);
    await press('I think so');
    expect(events).toEqual([{ character: 'leaf-shape', states: NARROW, sureness: 'think', couplet: 1 }]);
    expect(store.snapshot.trail).toHaveLength(1);
    expect(heading()).toContain('Question 2');
    expect(root.activeElement?.getAttribute('role')).toBe('heading');
    expect(root.querySelector(':checked')).toBeNull();
  });

  test('both branches stay for who cannot tell', async () => {
    const { part, press, heading } = await shown();
    const events: LeadwortEvents['leadwort-answer'][] = [];
    part.addEventListener('leadwort-answer', (event) => events.push(event.detail));
    await press('Can’t tell');
    expect(events).toEqual([{ character: 'leaf-shape', skipped: true, couplet: 1 }]);
    expect(store.snapshot.walk?.path[0]?.open).toBe(true);
    expect(heading()).toContain('Question 2');
  });

  test('leads over to a free choice of characters', async () => {
    const { press } = await shown();
    await press('Something else');
    expect(store.snapshot.way).toBe('free');
  });

  test('looked at again, shows what was said, takes the focus, and can be left as it was', async () => {
    const { part, heading, root, find, press } = await shown();
    store.request('lead', { couplet: 1, lead: 1, sureness: 'sure' });
    await part.updateComplete;
    store.request('ask', { character: 'leaf-shape' });
    await part.updateComplete;
    expect(heading()).toContain('Question 1 again');
    expect(root.activeElement?.getAttribute('role')).toBe('heading');
    expect((find(':checked') as HTMLInputElement).value).toBe('1');
    await press('Keep as it was');
    expect(heading()).toContain('Question 2');
    expect(store.snapshot.trail).toHaveLength(1);
  });

  test('says what is not to be seen this month', async () => {
    store = new SessionStore(
      streambankWith([
        {
          number: 1,
          leads: [
            { character: 'flower-cluster', states: ['plume'], to: 'arundo-donax' },
            { character: 'flower-cluster', states: ['cob'], to: 'typha-latifolia' },
          ],
        },
      ]),
      { month: 1 },
    );
    const hidden = !key.key.characters.find(({ id }) => id === 'flower-cluster')?.months.includes(1);
    const { text } = await shown();
    expect(text().includes('not to be seen in January')).toBe(hidden);
  });

  test('has sizes in the units asked for', async () => {
    store = new SessionStore(
      streambankWith([
        {
          number: 1,
          leads: [
            { character: 'height', states: ['ankle', 'knee', 'waist'], to: 'typha-latifolia' },
            { character: 'height', states: ['head', 'reach', 'above'], to: 'arundo-donax' },
          ],
        },
      ]),
      { month: 9 },
    );
    const { leads } = await shown({ ...english, units: 'metric' });
    expect(leads().map((lead) => lead.querySelector('.size')?.textContent)).toEqual(['under 1 m', 'over 1 m']);
  });

  test('holds three leads as well as two', async () => {
    const [one] = fiveCouplets;
    store = new SessionStore(
      streambankWith([
        {
          number: 1,
          leads: [
            ...(one?.leads ?? []).map((lead) => ({ ...lead, to: 'arundo-donax' })),
            { text: 'No leaves at all.', to: 'pistia-stratiotes' },
          ],
        },
      ]),
      { month: 9 },
    );
    const drawn = await shown();
    expect(drawn.leads()).toHaveLength(3);
    await expectSound(drawn);
  });
});

test('at the end it says where a person has come', async () => {
  store.request('lead', { couplet: 1, lead: 0, sureness: 'sure' });
  store.request('lead', { couplet: 2, lead: 1, sureness: 'sure' });
  const { heading } = await shown();
  expect(heading()).toMatch(/^Step by step you have come to .*cattail/);
});

test('is done by keyboard alone', async () => {
  const { root, find, heading } = await shown();
  find('[role=heading]').focus();
  for (let i = 0; i < 4 && !root.activeElement?.matches('input'); i++) await userEvent.keyboard('{Tab}');
  await userEvent.keyboard(' ');
  await userEvent.keyboard('{ArrowDown}');
  await expect.poll(() => (root.querySelector(':checked') as HTMLInputElement)?.value).toBe('1');
  expect(store.snapshot.trail, 'a mark alone sends nothing').toHaveLength(0);
  await userEvent.keyboard('{Tab}{Enter}');
  await expect.poll(heading).toContain('Question 2');
  expect(store.snapshot.trail).toHaveLength(1);
});

test('the leads can be reached by keyboard after couplets that were answered by arrow, or passed over', async () => {
  const { root, find, press, heading } = await shown();
  find('[role=heading]').focus();
  const toLeads = async () => {
    for (let i = 0; i < 5 && !root.activeElement?.matches('input'); i++) await userEvent.keyboard('{Tab}');
    expect(root.activeElement?.matches('.lead input')).toBe(true);
  };
  await toLeads();
  await userEvent.keyboard(' {ArrowDown}{Tab}{Enter}');
  await expect.poll(heading).toContain('Question 2');
  await toLeads();
  await press('Can’t tell');
  await expect.poll(heading).toContain('Question 3');
  await toLeads();
});

test('stands side by side where there is room, and one below the other where there is not', async () => {
  await page.viewport(900, 800);
  const drawn = await shown();
  const [one, two] = drawn.leads().map((lead) => lead.getBoundingClientRect());
  expect(two?.left).toBeGreaterThan(one?.right ?? 0);
  drawn.holder.parentElement?.classList.add('narrow');
  const [above, below] = drawn.leads().map((lead) => lead.getBoundingClientRect());
  expect(below?.top).toBeGreaterThan(above?.bottom ?? 0);
  await expectSound(drawn);
});

test('meets no barrier that can be found by a machine, in any state, in either language and direction', async () => {
  const drawn = await shown();
  await expectSound(drawn);
  await drawn.mark(1);
  await expectSound(drawn);
  for (const one of drawn.all('button, summary, .lead'))
    expect(one.getBoundingClientRect().height).toBeGreaterThanOrEqual(47.5);
  drawn.holder.dir = 'rtl';
  await expectSound(drawn);
  drawn.holder.dir = '';
  drawn.holder.settings.setValue(await spanish());
  await drawn.part.updateComplete;
  expect(drawn.text()).toContain('Además');
  await expectSound(drawn);
});
