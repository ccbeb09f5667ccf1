// Native, introduced, invasive: a word first, with a small mark of our own beside it.
import { css, html, svg, type TemplateResult } from 'lit';
import type { Standing } from '../../key/index.ts';
import type { Words } from '../../words/index.ts';

/** A leaf with its roots; a leaf in an open ring; a leaf crossed by two ripples. Drawn on 24 x 24, in one line weight. */
const MARKS: Readonly<Record<Standing, TemplateResult>> = {
  native: svg`<path d="M12 1.5C16.5 5 16.5 10 12 14 7.5 10 7.5 5 12 1.5ZM12 7v10.5M12 17.5 6 22.5M12 17.5v5M12 17.5l6 5" />`,
  introduced: svg`<path d="M15.5 2.600A10 10 0 1 1 8.5 2.600M12 4.5C15.5 7.5 15.5 12 12 15.5 8.5 12 8.5 7.5 12 4.5ZM12 9.5v9" />`,
  invasive: svg`<path d="M12 1.5C18 6.5 18 15 12 20.5 6 15 6 6.5 12 1.5ZM1.5 10.5c1.800-2.400 3.5-2.400 5.250 0s3.5 2.400 5.250 0 3.5-2.400 5.250 0 3.5 2.400 5.250 0M1.5 16c1.800-2.400 3.5-2.400 5.250 0s3.5 2.400 5.250 0 3.5-2.400 5.250 0 3.5 2.400 5.250 0" />`,
};

/** The word for where a plant belongs, with its mark. */
export function statusOf(status: Standing, words: Words): TemplateResult {
  return html`<span class="status ${status}"><svg viewBox="0 0 24 24" aria-hidden="true">${MARKS[status]}</svg>${words.common.status[status]}</span>`;
}

export const statusStyles = css`
  .rank { font-style: normal; }
  .status { white-space: nowrap; font-weight: 600; color: var(--reed); }
  .status svg { inline-size: 1.25em; block-size: 1.25em; vertical-align: -0.28em; margin-inline-end: 0.3em; fill: none; stroke: currentColor; stroke-width: 1.8; stroke-linecap: round; stroke-linejoin: round; }
  .status.introduced { color: var(--mud); }
  .status.invasive { color: var(--rust); }
`;
