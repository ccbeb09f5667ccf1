export { type Link, LinkError, readLink, writeLink } from './link.ts';
