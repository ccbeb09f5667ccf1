// Drawings of sizes, measured by the browser (SVGGraphicsElement.getBBox), against MEASURES and the bounds of the classes.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import data from '../../../keys/streambank/characters.json';
import { BOX, type Drawing, type Unit } from '../../key/index.ts';
import { ARM_TIP, fingersOf, forearmOf, handOf, MEASURES, pencilOf, personOf } from '../figures.ts';
import type { Form } from '../sketch.ts';
import { drawnSize, SIZE_BOOKS } from './sizes.ts';

const XMLNS = 'http://www.w3.org/2000/svg';
/** The box around paths, strokes not counted, in units of the drawing. */
function boxOf(...paths: readonly string[]): DOMRect {
  const svg = document.createElementNS(XMLNS, 'svg');
  const path = document.createElementNS(XMLNS, 'path');
  path.setAttribute('d', paths.join(''));
  svg.append(path);
  document.body.append(svg);
  const box = path.getBBox();
  svg.remove();
  return box;
}
const ofPen = (drawing: Drawing, ...pens: readonly string[]): DOMRect =>
  boxOf(...drawing.filter(([pen]) => pens.includes(pen)).map(([, path]) => path));

const books = new Map(SIZE_BOOKS.map((book) => [book.role, book]));
const drawn = (role: string, form: Form): Drawing => books.get(role)?.sketch(form)?.drawing ?? [];
function classesOf(role: string): Form[] {
  const character = data.characters.find(({ id }) => id === role);
  let from = 0;
  return (character?.classes ?? []).map(({ id, ...rest }) => {
    const to = 'to' in rest ? (rest.to as number) : undefined;
    const form: Form = { form: id, from, ...(to === undefined ? {} : { to }), unit: character?.unit as Unit };
    from = to ?? from;
    return form;
  });
}
const cm = (form: Form): number => drawnSize(form) as number;
/** Path data have one decimal; curves through points overshoot a little. */
const near = (actual: number, expected: number, what: string): void =>
  expect(Math.abs(actual - expected), `${what}: ${actual}, expected ${expected}`).toBeLessThan(0.4 + 0.012 * expected);

describe('the figures', () => {
  test('stand on their base and are as long as asked, at any length', () => {
    fc.assert(
      fc.property(fc.double({ min: 12, max: 90, noNaN: true }), (length) => {
        for (const path of [personOf(length), handOf(length), forearmOf(length), pencilOf(length / 9, length)]) {
          const box = boxOf(path);
          near(box.height, length, 'length');
          near(length + box.y + box.height, length, 'base');
        }
      }),
      { numRuns: 30 },
    );
  });
  test('have the widths of MEASURES', () => {
    near(boxOf(fingersOf(3, 54, 71)).width, 54, 'three fingers');
    near(boxOf(pencilOf(7, 80)).width, 7, 'pencil');
    // The hand of the forearm is a hand at the forearm's scale: 18 of 45 cm.
    near(
      boxOf(forearmOf(90)).width,
      boxOf(handOf((90 * MEASURES.hand) / MEASURES.forearm)).width,
      'hand of the forearm',
    );
  });
  test('the arm of the person is as long as MEASURES says, from the shoulder to the fingertips', () => {
    // Shoulders at 81 hundredths of the stature.
    expect(Math.abs((0.81 - ARM_TIP) * MEASURES.person - MEASURES.arm)).toBeLessThan(2);
  });
});

describe('the demonstration key’s classes', () => {
  test.each(classesOf('height'))('the plant of height $form is to scale beside a person of 1.7 m', (form) => {
    const drawing = drawn('height', form);
    const person = ofPen(drawing, 'scale').height;
    near(ofPen(drawing, 'trace', 'mark').height, (person * cm(form)) / MEASURES.person, 'plant');
  });

  test.each(classesOf('leaf-length'))('the leaf of length $form is to scale beside its hand, arm or person', (form) => {
    const drawing = drawn('leaf-length', form);
    const stick =
      { finger: MEASURES.hand, hand: MEASURES.hand, forearm: MEASURES.forearm }[form.form] ?? MEASURES.person;
    near(ofPen(drawing, 'mark').height, (ofPen(drawing, 'scale').height * cm(form)) / stick, 'leaf');
  });

  test.each(classesOf('cluster-length'))('the head of length $form is to scale beside its hand or forearm', (form) => {
    const drawing = drawn('cluster-length', form);
    const stick = { finger: MEASURES.hand, hand: MEASURES.hand }[form.form] ?? MEASURES.forearm;
    near(ofPen(drawing, 'trace').height, (ofPen(drawing, 'scale').height * cm(form)) / stick, 'head');
  });

  test.each(classesOf('leaf-width'))(
    'the leaf of width $form is to scale beside its pencil, fingers or hand',
    (form) => {
      const drawing = drawn('leaf-width', form);
      const scale = ofPen(drawing, 'scale');
      const [length, stick] = {
        pencil: [scale.width, MEASURES.pencil],
        thumb: [scale.width, MEASURES.thumb],
        fingers: [scale.width, MEASURES.finger * 3],
        palm: [scale.height, MEASURES.hand],
      }[form.form] ?? [scale.width, MEASURES.hand];
      near(ofPen(drawing, 'mark').width, ((length as number) * cm(form)) / (stick as number), 'leaf');
    },
  );

  test('the stems are drawn at one scale, which is that of the pencil and the finger', () => {
    const classes = classesOf('stem-thickness');
    const scales = classes.map((form) => ofPen(drawn('stem-thickness', form), 'mark').width / cm(form));
    for (const scale of scales) near(scale, scales[0] as number, 'units for a centimetre');
    const sticks = [MEASURES.pencil, MEASURES.finger, MEASURES.finger];
    classes.slice(1).forEach((form, i) => {
      near(
        ofPen(drawn('stem-thickness', form), 'scale').width,
        (sticks[i] as number) * (scales[0] as number),
        form.form,
      );
    });
  });

  test.each(classesOf('ligule-length'))('the skin of height $form is as high as the ruler beside it says', (form) => {
    const drawing = drawn('ligule-length', form);
    const ticks =
      drawing
        .find(([pen]) => pen === 'fine')?.[1]
        .split('M')
        .slice(1) ?? [];
    const millimetre = boxOf(...ticks.map((tick) => `M${tick}`)).height / (ticks.length - 1);
    near(ofPen(drawing, 'mark').height, millimetre * cm(form) * 10, 'skin');
  });

  test.each([...books.keys()])('the drawn sizes of %s grow from class to class and lie within their class', (role) => {
    const classes = classesOf(role);
    expect(classes.length).toBeGreaterThan(3);
    let before = 0;
    for (const form of classes) {
      expect(cm(form)).toBeGreaterThan(before);
      const inCm = { mm: 0.1, cm: 1, m: 100 }[form.unit as 'mm'];
      expect(cm(form)).toBeGreaterThan((form.from ?? 0) * inCm);
      expect(cm(form)).toBeLessThan((form.to ?? Number.POSITIVE_INFINITY) * inCm);
      before = cm(form);
    }
  });
});

describe('classes of any key', () => {
  const bound = fc.double({ min: 0.02, max: 2000, noNaN: true });
  test.each([...books.keys()])(
    'a drawing of %s lies in its square whatever the bounds, in any unit of length',
    (role) => {
      fc.assert(
        fc.property(bound, bound, fc.boolean(), (a, b, last) => {
          const [from, to] = [Math.min(a, b), Math.max(a, b) + 0.01];
          const drawing = drawn(role, last ? { form: 'x', from, unit: 'cm' } : { form: 'x', from, to, unit: 'cm' });
          const box = boxOf(...drawing.map(([, path]) => path));
          expect(box.x).toBeGreaterThanOrEqual(0);
          expect(box.y).toBeGreaterThanOrEqual(0);
          expect(box.x + box.width).toBeLessThanOrEqual(BOX);
          expect(box.y + box.height).toBeLessThanOrEqual(BOX);
        }),
        { numRuns: 60 },
      );
    },
  );

  test('the same size in another unit is the same drawing; a class of counts, or without bounds, has none', () => {
    for (const { role, sketch } of SIZE_BOOKS) {
      expect(sketch({ form: 'a', from: 10, to: 20, unit: 'mm' }), role).toEqual(
        sketch({ form: 'a', from: 1, to: 2, unit: 'cm' }),
      );
      expect(sketch({ form: 'a', from: 1, to: 2, unit: 'count' }), role).toBeUndefined();
      expect(sketch({ form: 'a' }), role).toBeUndefined();
    }
  });
});
