// The package describes only its largest build; this one reads JPEG and HEIC.
declare module 'exifr/dist/lite.esm.mjs' {
  export { gps, parse } from 'exifr';
}
