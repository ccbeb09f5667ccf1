import { html } from 'lit';
import { beforeEach, describe, expect, test } from 'vitest';
import { fiveCouplets } from '../../../tests/support/five-couplets.ts';
import { english, expectRoom, expectSound, held, spanish } from '../../../tests/support/held.ts';
import { withMedia } from '../../../tests/support/media.ts';
import { answered, streambankWith } from '../../../tests/support/streambank.ts';
import { SessionStore } from '../../session/index.ts';
import './define.ts';
import type { LeadwortStream } from './stream.ts';

const key = streambankWith(fiveCouplets);
let store: SessionStore;
beforeEach(() => {
  store = new SessionStore(key, { month: 9 });
});
const shown = (settings = english, of = store) =>
  held<LeadwortStream>(html`<leadwort-stream></leadwort-stream>`, of, settings);
const says = ({ find }: Awaited<ReturnType<typeof shown>>) => find('svg').getAttribute('aria-label');

describe('the picture', () => {
  test('says in one sentence where the water goes', async () => {
    const drawn = await shown();
    expect(says(drawn)).toBe('The key as a stream: the water still runs to all 55 plants.');
    store.request('answer', { answer: { character: 'leaf-base-mark', states: ['wedge'], sureness: 'sure' } });
    await drawn.part.updateComplete;
    expect(says(drawn)).toMatch(/^The key as a stream: most of the water runs to giant reed/);
    expect(drawn.all('.mouths text').map((one) => one.textContent)).toContain('giant reed');
  });

  test('names no plant before anything was said', async () => {
    const { all } = await shown();
    expect(all('.mouths text')).toHaveLength(0);
  });

  test('marks the course that was walked and where a person stands', async () => {
    const drawn = await shown();
    expect(drawn.all('.course path')).toHaveLength(0);
    const before = drawn.find('.here').getAttribute('cy');
    store.request('lead', { couplet: 1, lead: 0, sureness: 'sure' });
    await drawn.part.updateComplete;
    expect(drawn.all('.course path')).toHaveLength(2);
    expect(Number(drawn.find('.here').getAttribute('cy'))).toBeGreaterThan(Number(before));
  });

  test('shows a course that could not be told by its banks alone', async () => {
    store.request('pass', { couplet: 1 });
    const { all } = await shown();
    expect(all('.course .open')).toHaveLength(1);
  });

  test('keeps every piece of water as answers come, so that it can run over into its new form', async () => {
    const drawn = await shown();
    const before = drawn.all('.water path');
    store.request('lead', { couplet: 1, lead: 0, sureness: 'sure' });
    await drawn.part.updateComplete;
    expect(drawn.all('.water path')).toEqual(before);
    expect(getComputedStyle(before[0] as HTMLElement).transitionProperty).toContain('d');
  });

  test('stands still for who wants less motion', async () => {
    const { find } = await shown();
    await withMedia({ reducedMotion: 'reduce' }, () => {
      expect(getComputedStyle(find('.water path')).transitionDuration).toMatch(/^0s/);
      expect(getComputedStyle(find('.water path')).transitionProperty).toBe('none');
    });
  });

  test('is drawn in the person’s own colours where colours are forced', async () => {
    store.request('lead', { couplet: 1, lead: 0, sureness: 'sure' });
    const { find } = await shown();
    const colours = () => [find('.water path'), find('.course path')].map((one) => getComputedStyle(one).fill);
    const own = colours();
    await withMedia({ forcedColors: 'active' }, () => {
      const [water, course] = colours();
      expect(water).not.toBe(own[0]);
      expect(course).not.toBe(water);
    });
  });

  test('is not there for a key without couplets', async () => {
    const { root } = await shown(english, answered({}));
    expect(root.querySelector('svg')).toBeNull();
  });
});

describe('the outline', () => {
  test('lists the forks on the course with how much water each lead has, and where a person stands', async () => {
    store.request('lead', { couplet: 1, lead: 0, sureness: 'sure' });
    const drawn = await shown();
    const list = drawn.find('[part=outline] > ol').textContent?.replace(/\s+/g, ' ') ?? '';
    expect(list).toMatch(
      /Fork 1 · Leaf shape.*\(your way\) .+ parts of the water.*Fork 2 · Kind of plant: You are here/,
    );
    expect(drawn.all('ol ol')).toHaveLength(1);
  });

  test('leads back to a fork that was walked', async () => {
    store.request('lead', { couplet: 1, lead: 0, sureness: 'sure' });
    const drawn = await shown();
    drawn.find('summary').click();
    expect(drawn.all('[part=outline] button')).toHaveLength(1);
    drawn.control('Look at this fork again: Leaf shape').click();
    expect(store.snapshot.asked).toMatchObject({ reason: 'changing', fork: { number: 1 } });
  });
});

test('meets no barrier that can be found by a machine, in either language and direction', async () => {
  store.request('lead', { couplet: 1, lead: 1, sureness: 'think' });
  const drawn = await shown();
  drawn.find('summary').click();
  await expectSound(drawn);
  expectRoom(drawn);
  drawn.holder.dir = 'rtl';
  drawn.holder.parentElement?.classList.add('narrow');
  await expectSound(drawn);
  drawn.holder.settings.setValue(await spanish());
  await drawn.part.updateComplete;
  expect(drawn.text()).toContain('Horqueta 1');
  await expectSound(drawn);
});
