export { albumContext, type Settings, sessionContext, settingsContext } from './contexts.ts';
