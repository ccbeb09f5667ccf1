export { mailLink, phoneLink } from './contact.ts';
export { monthsInWords, type Span, spans } from './months.ts';
export { byTopic, firstAndRest, type NumberedStatement, type TopicGroup } from './topics.ts';
