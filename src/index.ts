// The element classes and their types; importing this module registers nothing.
export { LeadwortComparison } from './elements/comparison/comparison.ts';
export { LeadwortCouplet } from './elements/couplet/couplet.ts';
export { LeadwortGuidance } from './elements/guidance/guidance.ts';
export { LeadwortKey } from './elements/key/key.ts';
export { LeadwortNames } from './elements/names/names.ts';
export { LeadwortPortrait } from './elements/portrait/portrait.ts';
export { LeadwortQuestion } from './elements/question/question.ts';
export { LeadwortReport } from './elements/report/report.ts';
export { LeadwortSession } from './elements/session/session.ts';
export type { LeadwortEvents } from './elements/shared/events.ts';
export { LeadwortSheet } from './elements/sheet/sheet.ts';
export { LeadwortStanding } from './elements/standing/standing.ts';
export { LeadwortStream } from './elements/stream/stream.ts';
export { LeadwortTerm } from './elements/term/term.ts';
export { LeadwortTerms } from './elements/term/terms.ts';
export { LeadwortTrail } from './elements/trail/trail.ts';
export { LeadwortVerdict } from './elements/verdict/verdict.ts';
export { VERSION } from './version.ts';
