// The forms in which a find leaves: a page, a mail, a table, a map.
export { csvOf, defused } from './csv.ts';
export { COLUMNS, type Column, darwinCoreCsv, darwinCoreRow, type Row, type RowOptions } from './darwin-core.ts';
export { type FindCollection, type FindFeature, geoJson } from './geojson.ts';
export { type Mail, MOST_ADDRESS, mailOf, mailto } from './mail.ts';
export { type FormOptions, type Report, reportOf, type Section } from './told.ts';
export { type FormWords, formWords, type PhotoWords } from './words.ts';
