// What of the key comes while a person reads the first question.
export { renderNext } from './next.ts';
export { renderSettings, sendWaiting } from './settings.ts';
