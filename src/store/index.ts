export { databaseName, VERSION } from './database.ts';
export { StoreFullError, StoreUnavailableError } from './errors.ts';
export { type KeeperOptions, TrailKeeper } from './keeper.ts';
export { aloneByLock, Outbox, type OutboxOptions } from './outbox/outbox.ts';
export type { AsideRecord, FindRecord, OutboxRecord, PhotoRecord, TrailRecord } from './records.ts';
export { LeadwortStore, RECEIPTS } from './store.ts';
