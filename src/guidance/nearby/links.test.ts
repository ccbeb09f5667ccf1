import { expect, test } from 'vitest';
import { mailLink, phoneLink } from './links.ts';

test.each([
  ['555-0142', 'tel:5550142'],
  ['+1 (555) 010-0142', 'tel:+15550100142'],
  ['ask Bo', undefined],
  ['', undefined],
])('%j is dialled as %s', (phone, link) => {
  expect(phoneLink(phone)).toBe(link);
});

test('a mail link carries subject and lines, and cannot be given another addressee', () => {
  const link = mailLink('plants+reed@example.org', 'Giant reed?\r\nBcc: x@example.org & more', ['Línea 1', 'a=b&cc=x']);
  const url = new URL(link ?? '');
  expect(url.pathname).toBe('plants%2Breed@example.org');
  expect([...url.searchParams]).toEqual([
    ['subject', 'Giant reed? Bcc: x@example.org & more'],
    ['body', 'Línea 1\r\na=b&cc=x'],
  ]);
  expect(link).toContain('%0D%0A');
  expect(link).not.toMatch(/[+ ]/);
  expect(mailLink('a@example.org', '\ud800', [])).toContain('subject=%EF%BF%BD');
});

test.each(['a@example.org,b@example.org', 'a@example.org?cc=b@example.org', 'nobody', '', 'a@b'])(
  '%j is no address to write to',
  (email) => {
    expect(mailLink(email, 's', [])).toBeUndefined();
  },
);
