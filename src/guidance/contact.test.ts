import { expect, test } from 'vitest';
import { mailLink, phoneLink } from './contact.ts';

test.each([
  ['555-0142', 'tel:5550142'],
  ['+1 (555) 01-42', 'tel:+15550142'],
  ['911', 'tel:911'],
  ['12', undefined],
  ['ask Ana', undefined],
  ['', undefined],
])('the telephone %j is %s', (text, link) => {
  expect(phoneLink(text)).toBe(link);
});

test.each([
  ['creek@example.org', 'mailto:creek@example.org'],
  [' a.b+c@creek.example.org ', 'mailto:a.b+c@creek.example.org'],
  ['a@example.org?bcc=b@example.org', undefined],
  ['javascript:alert(1)', undefined],
  ['creek', undefined],
  ['', undefined],
])('the address %j is %s', (text, link) => {
  expect(mailLink(text)).toBe(link);
});
