// What came of sending a report.

/** That a report arrived. */
export interface Receipt {
  /** The number that the receiver gave; undefined when it gave none. */
  readonly number?: string;
  /** Where the receiver says that it can be seen: an absolute http or https address. */
  readonly at?: string;
  /** ISO 8601: when the answer came, by the clock of the device. */
  readonly when: string;
  /** The key it was sent under; the receiver can find it by that. */
  readonly key: string;
  readonly photos: number;
  /** Of the report and its photographs together. */
  readonly bytes: number;
  readonly tries: number;
}

/** One thing the receiver found wrong. */
export interface Fault {
  /** Path of the field in the find, as `/place/lat`; empty when the receiver did not say. */
  readonly path: string;
  readonly words: string;
}

/** Why a report did not arrive yet. */
export type WaitReason = 'no-signal' | 'too-slow' | 'busy' | 'server';

export type Outcome =
  | { readonly state: 'sent'; readonly receipt: Receipt }
  /** Nothing is lost: it can be sent again under the same key. `after`: the receiver asked to wait so many milliseconds. */
  | { readonly state: 'waiting'; readonly reason: WaitReason; readonly tries: number; readonly after?: number }
  /** Sending the same again is of no use. `status` is that of HTTP; `moved`: the address leads elsewhere. */
  | {
      readonly state: 'refused';
      readonly status: number;
      readonly moved: boolean;
      readonly words: string;
      readonly faults: readonly Fault[];
    };
