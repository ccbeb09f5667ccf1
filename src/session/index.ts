export { effects, type RequestName, type Requests } from './requests.ts';
export type { Question, QuestionReason, SessionState, Snapshot } from './state.ts';
export { SessionError, type SessionStart, SessionStore } from './store.ts';
