// What of the key comes while a person reads the first question.

export { renderFoot, renderNearby, renderReport, renderStream } from './drawers.ts';
export { renderTrouble } from './keeping.ts';
export { laterStyles } from './later.styles.ts';
export { renderNext } from './next.ts';
export { renderNotice } from './notice.ts';
export { sendWaiting } from './settings.ts';
