export { type CoverAgreement, coverAgreement } from './observers.ts';
export { coverOf, type Leaf, type Plot, plotOf } from './plot.ts';
