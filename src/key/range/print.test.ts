import { describe, expect, test } from 'vitest';
import { parseRange, printRange } from './index.ts';

describe('printed as it is', () => {
  test.each([
    ['(1.5-)2-6(-10)cm', '(1.5–)2–6(–10) cm'],
    ['(0.5)1-3(5) m', '(0.5–)1–3(–5) m'],
    ['2-6x1-2 cm', '2–6 × 1–2 cm'],
    ['2-6 cm x 5-10 mm', '2–6 cm × 5–10 mm'],
    ['up to 4(-6) m', 'to 4(–6) m'],
    ['up to about 4 m', 'to ca. 4 m'],
    ['over 3 m', 'at least 3 m'],
    ['about 10 m', 'ca. 10 m'],
    ['5 or 10', '5 or 10'],
    ['5 (or 10)', '5(or 10)'],
    ['(3 or) 4', '(3 or)4'],
    ['(1 or 2 or)3 or 4(or 5 or 6)', '(1 or 2 or)3 or 4(or 5 or 6)'],
    ['3-5-lobed', '3–5-lobed'],
    ['(3 or)4(or 5)-lobed', '(3 or)4(or 5)-lobed'],
    ['1.5-4.0625 in', '1 1/2–4 1/16 in'],
    ['1/3 ft', '1/3 ft'],
    ['0.1 in', '0.1 in'],
    ['1/2 cm', '0.5 cm'],
    ['5 ft 6 in', '66 in'],
  ])('%s becomes %s', (text, printed) => {
    expect(printRange(parseRange(text))).toBe(printed);
  });

  test('in the words of another language', () => {
    const words = { about: 'aprox.', upTo: 'hasta', atLeast: 'al menos', or: 'o' };
    expect(printRange(parseRange('up to about 4 m'), { words })).toBe('hasta aprox. 4 m');
    expect(printRange(parseRange('(3 or)4'), { words })).toBe('(3 o)4');
  });
});

/** Rounding rules are this project's own. Conversions by hand with 1 in = 2.54 cm and 1 ft = 0.3048 m. */
describe('printed for readers of feet and inches', () => {
  test.each([
    ['2.54-30.48 cm', '1–12 in'],
    ['(1-)2-6(-8) cm', '(3/8–)3/4–2 1/4(–3 1/4) in'],
    ['0.5-2 cm', '1/4–3/4 in'],
    ['13 mm', '1/2 in'],
    ['10-35 mm', '3/8–1 3/8 in'],
    ['6.35-12.7 cm', '2 1/2–5 in'],
    ['18-75 cm', '7–30 in'],
    ['100-300 cm', '3 1/4–10 ft'],
    ['to 4 m', 'to 13 ft'],
    ['(2-)3-10 m', '(6 1/2–)10–33 ft'],
    ['to 40 m', 'to 130 ft'],
    ['0.9-1.2 m', '3–4 ft'],
    ['0.1-0.46 m', '4–18 in'],
    ['(0-)10-80 mm', '(0–)3/8–3 1/4 in'],
    ['2–6 × 1–2 cm', '3/4–2 1/4 × 3/8–3/4 in'],
    ['100-200 cm × 10-20 mm', '3 1/4–6 1/2 ft × 3/8–3/4 in'],
    ['ca. 1 m', 'ca. 3 1/4 ft'],
    ['11 cm', '4 1/4 in'],
    ['2.5 mm', '1/8 in'],
    ['5-5 cm', 'ca. 2 in'],
    ['5 or 10 cm', '2 or 4 in'],
  ])('%s becomes %s', (text, printed) => {
    expect(printRange(parseRange(text), { units: 'us' })).toBe(printed);
  });

  test.each([
    ['what an eighth of an inch would blur has two digits', '0.4-1 mm', '0.016–0.039 in'],
    ['also in one value', '2.2 mm', '0.087 in'],
    ['what two digits would run together has three', '2-2.01 m', '6.56–6.59 ft'],
    ['what three run together is one value, about', '20-20.001 m', 'ca. 65.6 ft'],
    ['also among alternatives', '20 or 20.001 m', 'ca. 65.6 ft'],
    ['which stays usual if it was', '10 or 20(or 20.001) m', '32.8 or 65.6 ft'],
    ['and an exception that runs together is left out', '(19.999-)20(-20.001) m', '65.6 ft'],
    ['also above a limit', 'to 20(-20.001) m', 'to 65.6 ft'],
  ])('%s: %s becomes %s', (_rule, text, printed) => {
    expect(printRange(parseRange(text), { units: 'us' })).toBe(printed);
  });

  test('own units and counts stay as they are', () => {
    expect(printRange(parseRange('(2-)3-7 ft'), { units: 'us' })).toBe('(2–)3–7 ft');
    expect(printRange(parseRange('3--5-lobed'), { units: 'us' })).toBe('3–5-lobed');
  });
});

describe('printed for readers of metres', () => {
  test.each([
    ['6-20 ft', '1.8–6.1 m'],
    ['1 1/2-4 in', '3.8–10 cm'],
    ['1/8-3/8 in', '3.2–9.5 mm'],
    ['1 ft', '30 cm'],
    ['at least 5 ft 6 in', 'at least 1.7 m'],
    ['2-6 cm', '2–6 cm'],
  ])('%s becomes %s', (text, printed) => {
    expect(printRange(parseRange(text), { units: 'metric' })).toBe(printed);
  });
});
