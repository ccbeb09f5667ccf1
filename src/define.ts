// Importing this module registers every element; importing `index.ts` registers none.
export { VERSION } from './version.ts';
