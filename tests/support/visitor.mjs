// A visitor of the demonstration without a mouse: Tab, Space and Enter alone, going by the words on the page.

/** What has the focus, shadow roots included: its role or kind, and its words. Runs in the page. */
const focused = () => {
  let at = document.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  const input = at instanceof HTMLInputElement ? at : undefined;
  const words = input ? input.labels?.[0]?.querySelector('.title') : at;
  return {
    kind: at?.getAttribute('role') ?? input?.type ?? at?.localName ?? '',
    text: words?.textContent?.replace(/\s+/g, ' ').trim() ?? '',
  };
};

/** Presses of Tab after which something is held to be out of reach. */
const MOST = 60;

/**
 * @typedef {{ kind: string, text: string }} Stop
 * @typedef {{ sure: string, cannotTell: string, showAll: (count: number) => string }} Buttons As the page's language has them.
 */

export class Visitor {
  /** @param {import('playwright').Page} page */
  constructor(page) {
    this.page = page;
  }

  /** @returns {Promise<Stop>} */
  at() {
    return this.page.evaluate(focused);
  }

  /**
   * Tab until `wanted` holds of what has the focus; not even once when it does already.
   * @param {string} name What is looked for, for the error.
   * @param {(stop: Stop) => boolean} wanted
   */
  async tabTo(name, wanted) {
    const passed = [];
    for (let i = 0; i < MOST; i++) {
      const stop = await this.at();
      if (wanted(stop)) return;
      passed.push(`${stop.kind} "${stop.text.slice(0, 40)}"`);
      await this.page.keyboard.press('Tab');
    }
    throw new Error(`Tab does not lead to ${name}, but past ${passed.join(', ')}`);
  }

  /** @param {string} name */
  async press(name) {
    await this.tabTo(`the button "${name}"`, ({ kind, text }) => kind === 'button' && text === name);
    await this.page.keyboard.press('Enter');
  }

  /** The question on the screen; undefined once there is none, whatever else the heading says. */
  async question() {
    const heading = this.page.locator('[part=question] [role=heading]');
    if ((await heading.locator('.step').count()) === 0) return undefined;
    return (await heading.locator('[part=heading]').textContent())?.trim();
  }

  /** Labels of the answers on the screen, or the leads' words, in their order. */
  async shown() {
    const titles = await this.page.locator('[part=question] .card .title').allInnerTexts();
    return titles.map((title) => title.trim());
  }

  /** Whether what is asked is a couplet. */
  async atCouplet() {
    return (await this.page.locator('leadwort-couplet .lead').count()) > 0;
  }

  /**
   * Which lead has these labels among its words; undefined when none does, or several.
   * @param {readonly string[]} labels
   */
  async fitting(labels) {
    const words = labels.map((label) => label.toLowerCase());
    const fits = (await this.shown()).map((lead) => words.some((label) => lead.toLowerCase().includes(label)));
    return fits.filter((fit) => fit).length === 1 ? fits.indexOf(true) : undefined;
  }

  /**
   * Takes the lead that fits and is sure of it; says "Can't tell" when none does.
   * @param {readonly string[]} labels
   * @param {Buttons} buttons
   */
  async take(labels, buttons) {
    const lead = await this.fitting(labels);
    if (lead === undefined) return this.press(buttons.cannotTell);
    await this.tabTo('the leads', ({ kind }) => kind === 'radio');
    await this.page.keyboard.press('Space');
    for (let i = 0; i < lead; i++) await this.page.keyboard.press('ArrowDown');
    await this.press(buttons.sure);
  }

  /**
   * Leaves the couplets for a free choice of characters, or comes back to them: by the switch below the question.
   * @param {'couplets' | 'free'} to
   */
  async goBy(to) {
    const part = to === 'free' ? 'leadwort-question' : 'leadwort-couplet';
    await this.tabTo('the switch', ({ kind, text }) => kind === 'radio' && text === '');
    await this.page.keyboard.press(to === 'free' ? 'ArrowRight' : 'ArrowLeft');
    await this.page.locator(`${part} .card`).first().waitFor();
    await this.page.keyboard.press('Shift+Tab');
  }

  /** The number on the button that shows the rest of the answers. */
  async counted() {
    return Number(/\d+/.exec((await this.page.locator('leadwort-question .cards + button').textContent()) ?? '')?.[0]);
  }

  /**
   * Ticks the answers with these labels and is sure of them; says "Can't tell" when there are none.
   * @param {readonly string[]} labels
   * @param {Buttons} buttons
   */
  async answer(labels, buttons) {
    if (labels.length === 0) return this.press(buttons.cannotTell);
    const first = await this.shown();
    await this.tick(first.filter((label) => labels.includes(label)));
    const rest = labels.filter((label) => !first.includes(label));
    if (rest.length > 0) {
      await this.press(buttons.showAll(await this.counted()));
      await this.page.waitForFunction((n) => {
        const key = document.querySelector('leadwort-key')?.shadowRoot?.querySelector('leadwort-question');
        return (key?.shadowRoot?.querySelectorAll('.card').length ?? 0) > n;
      }, first.length);
      const order = await this.shown();
      await this.tick(rest.sort((a, b) => order.indexOf(a) - order.indexOf(b)));
    }
    await this.press(buttons.sure);
  }

  /** @param {readonly string[]} labels In the order in which they stand. */
  async tick(labels) {
    for (const label of labels) {
      await this.tabTo(`the answer "${label}"`, ({ kind, text }) => kind === 'checkbox' && text === label);
      await this.page.keyboard.press('Space');
    }
  }
}

/**
 * Labels that an answers file comes to for one question, in the page's language; none when the file is silent on it.
 * @param {any} bundle The key as the page loads it.
 * @param {{ answers: any[] }} file As in tests/answers/, numbers in each character's own unit.
 * @param {string} question As the page shows it.
 * @param {string} language
 * @returns {string[]}
 */
export function labelsFor(bundle, file, question, language) {
  const say = (/** @type {string} */ sentence) => bundle.text[language]?.text[sentence] ?? sentence;
  const character = bundle.characters.characters.find((/** @type {any} */ one) => say(one.question) === question);
  if (!character) throw new Error(`the key asks nothing like "${question}"`);
  const answer = file.answers.find((one) => one.character === character.id);
  if (!answer || answer.skipped) return [];
  if (answer.unit !== character.unit) throw new Error(`${character.id} is answered in ${answer.unit}`);
  const meant = answer.states
    ? character.states.filter((/** @type {any} */ one) => answer.states.includes(one.id))
    : [character.classes.find((/** @type {any} */ one) => one.to === undefined || answer.value < one.to)];
  return meant.map((/** @type {any} */ one) => say(one.label));
}
