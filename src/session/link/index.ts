export { parameterIn, withParameter } from './address.ts';
export { type Link, LinkError, readLink, writeLink } from './link.ts';
