export { type Feature, type FeatureMark, features } from './features.ts';
export { type Check, isOpen, type LookalikeOf, lookalikesOf } from './lookalikes.ts';
export { stateOrder } from './order.ts';
export { effects, type RequestName, type Requests } from './requests.ts';
export type { Question, QuestionReason, SessionState, Snapshot } from './state.ts';
export { observersOf, SessionError, type SessionStart, SessionStore } from './store.ts';
