import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FrameMessage, readMessage, writeMessage } from './message.ts';

const messages: readonly FrameMessage[] = [{ say: 'here' }, { say: 'measure' }, { say: 'height', height: 812.5 }];

test.each(messages)('$say is read as it was written, also after a structured clone', (message) => {
  expect(readMessage(structuredClone(writeMessage(message)))).toEqual(message);
});

test.each([
  ['nothing', undefined],
  ['text', 'leadwort'],
  ['null', null],
  ['another version', { leadwort: 2, say: 'here' }],
  ['another word', { leadwort: 1, say: 'go' }],
  ['no height', { leadwort: 1, say: 'height' }],
  ['a height in words', { leadwort: 1, say: 'height', height: '900' }],
  ['a height of nothing', { leadwort: 1, say: 'height', height: 0 }],
  ['a height that is no number', { leadwort: 1, say: 'height', height: Number.NaN }],
  ['an endless height', { leadwort: 1, say: 'height', height: Number.POSITIVE_INFINITY }],
])('%s is no message of ours', (_, data) => {
  expect(readMessage(data)).toBeUndefined();
});

test('whatever another page sends is read without a throw, and as nothing', () => {
  fc.assert(
    fc.property(fc.anything(), (data) => {
      expect(readMessage(data)).toBeUndefined();
    }),
  );
});
