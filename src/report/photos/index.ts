export { fromBase64, toBase64 } from './base64.ts';
export { fitted, hashOf, LONGEST, PhotoError, type Prepared, preparePhoto } from './prepare.ts';
