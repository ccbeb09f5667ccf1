export { VERSION } from './version.ts';
