import { css } from 'lit';

export const galleryStyles = css`
  nav { display: flex; flex-wrap: wrap; gap: 0.25em 1.5em; align-items: center; margin-block-end: 1em; border-block-end: 1px solid var(--line); }
  nav .target { display: flex; align-items: center; font-weight: 700; }
  nav [aria-current] { color: var(--ink); text-decoration: none; box-shadow: 0 0.2em 0 var(--reed); }
  .languages { margin-inline-start: auto; }
  .languages [aria-pressed='true'] { color: var(--ink); text-decoration: none; }
  h2 { margin-block: 1.6em 0.6em; font-size: 1.3em; }
  h2 small { color: var(--mud); font-weight: 400; font-size: 0.7em; }
  .drawings { display: grid; grid-template-columns: repeat(auto-fill, minmax(8.5em, 1fr)); gap: 1.25em 1em; }
  figure { margin: 0; break-inside: avoid; }
  .frame { inline-size: 96px; margin-block-end: 0.4em; }
  figcaption { font-size: 0.86em; line-height: 1.35; }
  .alt { display: block; margin-block-start: 0.25em; color: var(--mud); font-size: 0.92em; }
  .choose { display: flex; flex-wrap: wrap; gap: 0.75em 1.25em; align-items: center; margin-block-end: 1em; }
  .choose select { margin-inline-start: 0.5em; padding: 0.5em; border: 0.125em solid var(--reed); border-radius: var(--radius); background: var(--paper); }
  .portraits { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 22em), 1fr)); gap: 2em 1.5em; align-items: start; }
  .plant, .pair { content-visibility: auto; contain-intrinsic-size: auto 40em; break-inside: avoid; }
  .contents { columns: 20em; margin-block-end: 2em; font-size: 0.92em; }
  .contents li { padding-block: 0.15em; }
  .contents a { display: inline-block; min-block-size: 24px; }
  .pair { padding-block: 2em; border-block-start: 1px solid var(--line); }
  @media print {
    nav, .choose, .contents { display: none; }
    .plant, .pair { content-visibility: visible; }
    .pair { break-before: page; border: 0; }
  }
`;
