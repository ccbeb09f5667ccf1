import { css } from 'lit';

export const trailStyles = css`
  summary { display: flex; align-items: center; gap: 0.6em; padding-block: 0.5em; color: var(--mud); list-style: none; }
  summary::-webkit-details-marker { display: none; }
  /* A stem with its leaves: the trail so far, opened it turns down. */
  summary::before { content: ''; flex: none; inline-size: 0.55em; block-size: 0.55em; border-inline-end: 0.15em solid; border-block-end: 0.15em solid; rotate: -45deg; margin-inline: 0.2em; }
  details[open] > summary::before { rotate: 45deg; }
  .line { text-wrap: pretty; }
  .line::first-letter { text-transform: uppercase; }
  details[open] { margin-block-end: 1.25em; }
  ol { border-inline-start: 0.15em solid var(--line); margin-inline-start: 0.55em; padding-inline-start: 1em; padding-block: 0.25em; }
  li { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; column-gap: 1em; padding-block: 0.2em; }
  .what { flex: 1 1 14em; }
  .label { font-weight: 700; }
  .buttons { display: flex; gap: 0.5em; margin-inline-start: -0.5em; }
  @media print { .buttons, summary::before { display: none; } }
`;
