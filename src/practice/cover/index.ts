export { coverOf, type Leaf, type Plot, plotOf } from './plot.ts';
