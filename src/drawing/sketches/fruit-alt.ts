// What is to be seen on the drawings of fruits and seeds.
import type { Sketch } from '../sketch.ts';

export const FRUIT_ALT: Readonly<Record<string, Sketch['alt']>> = {
  grain: {
    en: 'Small dry grains that sit between pairs of thin husks along a stalk; one loose grain lies on a fingertip, tiny as a crumb.',
    es: 'Granos secos y pequeños entre pares de cascarillas delgadas a lo largo de un tallo; uno suelto, como una migaja, en la yema de un dedo.',
  },
  beads: {
    en: 'Hard, shiny beads stacked end to end, with one that has broken off and shows its hollow end; on a fingertip it is as big as a pea.',
    es: 'Cuentas duras y brillantes, una sobre otra, y una desprendida que muestra su hueco; en la yema de un dedo es como un chícharo.',
  },
  fluff: {
    en: 'Seeds that drift off a hairy stalk on the wind, each hanging from a tuft of fine hairs.',
    es: 'Semillas que el viento se lleva de un tallo peludo, cada una colgada de un mechón de pelos finos.',
  },
  nutlet: {
    en: 'A tuft of brown spikelets with overlapping scales, and one tiny drop-shaped nutlet from it, no more than a dot on a fingertip.',
    es: 'Un mechón de espiguillas cafés con escamas encimadas y una nuececita en forma de gota, apenas un punto en la yema de un dedo.',
  },
  'red-berry': {
    en: 'Bright red, shiny berries crowded on an upright stalk, each smaller than the coin beside them.',
    es: 'Bayas rojas y brillantes, apretadas en un tallo derecho, cada una más chica que la moneda de al lado.',
  },
  'green-berry': {
    en: 'Green berries, some already dark, in a cluster half wrapped by a torn leathery hood that bends down; a coin lies beside it.',
    es: 'Bayas verdes, algunas ya oscuras, en un racimo medio envuelto por una capucha rota y correosa que se inclina; al lado, una moneda.',
  },
  'pod-holes': {
    en: 'A cone-shaped pod with a flat top full of holes, one seed in each hole, several coins wide.',
    es: 'Una vaina en forma de cono, plana por arriba y llena de hoyos, con una semilla en cada hoyo, de varias monedas de ancho.',
  },
  'burr-head': {
    en: 'A round green head of many small beaked seeds, with one flat, winged seed beside it, tiny on a fingertip.',
    es: 'Una bola verde de muchas semillas pequeñas con pico, y al lado una semilla plana con ala, diminuta en la yema de un dedo.',
  },
  capsule: {
    en: 'A dry brown pod split open from the top into three parts, with round black seeds inside and some fallen out.',
    es: 'Una vaina café y seca, abierta desde arriba en tres partes, con semillas negras y redondas adentro y otras caídas.',
  },
  bladder: {
    en: 'A small, puffed, papery fruit with toothed ridges down its sides and withered threads on top, smaller than a fingertip.',
    es: 'Un fruto pequeño, inflado y como de papel, con costillas dentadas y unos hilos secos arriba, más chico que la yema de un dedo.',
  },
  'rounded-vessel': {
    en: 'A green ribbed urn with a flat round lid marked like a wheel, and a smaller fleshy ball on a curled stalk, both at the water.',
    es: 'Una urna verde con costillas y tapa plana y redonda, marcada como rueda, y una bola carnosa más chica en un tallo enroscado, junto al agua.',
  },
  splitting: {
    en: 'A flat, ribbed, rounded fruit that comes apart down the middle into two halves, tiny on a fingertip.',
    es: 'Un fruto plano, redondo y con costillas que se parte por la mitad en dos, diminuto en la yema de un dedo.',
  },
  none: {
    en: 'A bare stalk with empty cups where fruits would sit; rings of dots show that there are none.',
    es: 'Un tallo desnudo con copitas vacías donde estarían los frutos; unos aros de puntos muestran que no hay ninguno.',
  },
};
