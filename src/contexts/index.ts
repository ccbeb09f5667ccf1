export { type Settings, sessionContext, settingsContext } from './contexts.ts';
