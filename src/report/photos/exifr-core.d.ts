// The package describes only its largest build; these are the pieces of its source that read JPEG and HEIC.
declare module 'exifr/src/core.mjs' {
  export { parse } from 'exifr';
}
declare module 'exifr/src/file-parsers/*';
declare module 'exifr/src/segment-parsers/*';
