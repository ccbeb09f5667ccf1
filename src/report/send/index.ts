export type { Fault, Outcome, Receipt, WaitReason } from './outcome.ts';
export { type Parcel, type ParcelPhoto, parcelOf } from './parcel.ts';
export { backoff, type SendOptions, send, sendOnce } from './send.ts';
