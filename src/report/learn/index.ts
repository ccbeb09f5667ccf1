export { type Learned, learnFrom, type NotCounted, type Source } from './learn.ts';
