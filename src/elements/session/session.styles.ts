import { css } from 'lit';

export const sessionStyles = css`
  .notice:not(:empty) > * + * { margin-block-start: 0.75em; }
  .mistakes { overflow-wrap: anywhere; }
  .mistakes > li + li { margin-block-start: 0.5em; }
`;
