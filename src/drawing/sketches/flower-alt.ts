// What is to be seen on the drawings of flower clusters and seed heads.
import type { Sketch } from '../sketch.ts';

export const FLOWER_ALT: Readonly<Record<string, Sketch['alt']>> = {
  plume: {
    en: 'A full, feathery seed head as wide as a feather duster, its many crowded branches drooping at their tips.',
    es: 'Una espiga plumosa y llena, ancha como un plumero, con muchas ramas apretadas que cuelgan de la punta.',
  },
  'thin-plume': {
    en: 'A slim, feathery seed head that leans to one side, its few short branches close to the stem.',
    es: 'Una espiga plumosa y delgada, inclinada hacia un lado, con pocas ramas cortas pegadas al tallo.',
  },
  'open-spray': {
    en: 'A wide, airy spray of thread-thin branches, each with one small grain at its tip.',
    es: 'Un ramo ancho y ligero de ramas finas como hilos, cada una con un granito en la punta.',
  },
  fingers: {
    en: 'Three slim spikes that spread from one point at the top of the stem, like the toes of a bird.',
    es: 'Tres espigas delgadas que se abren desde un mismo punto en la punta del tallo, como los dedos de un ave.',
  },
  'flat-oats': {
    en: 'Flat, pointed spikelets, folded like pressed oats, that hang from an arching stem on thin threads.',
    es: 'Espiguillas planas y puntiagudas, plegadas como avena aplastada, que cuelgan de hilos delgados en un tallo arqueado.',
  },
  'one-sided': {
    en: 'Arching branches that bear a row of small round spikelets along their lower side only.',
    es: 'Ramas arqueadas con una hilera de espiguillas redondas y pequeñas solo por el lado de abajo.',
  },
  broom: {
    en: 'A bushy head at the top of the stem, narrow below and wide above like a broom, made of many upright tufts of hair.',
    es: 'Una cabeza tupida en la punta del tallo, angosta abajo y ancha arriba como una escoba, hecha de muchos mechones de pelos derechos.',
  },
  'narrow-spike': {
    en: 'A straight, thin wand of spikelets pressed close to the stem from top to bottom.',
    es: 'Una vara recta y delgada de espiguillas pegadas al tallo de arriba abajo.',
  },
  brush: {
    en: 'A dense, even cylinder with stiff bristles standing out all around it, like a bottle-brush.',
    es: 'Un cilindro denso y parejo, con cerdas tiesas por todos lados, como un cepillo de botellas.',
  },
  cob: {
    en: 'A smooth brown cob like a sausage on a stick, with a thin paler spike above it.',
    es: 'Una mazorca café y lisa, como una salchicha en un palo, con una espiga delgada y más clara encima.',
  },
  'brown-tufts': {
    en: 'A branched head with a small tuft of brown, pointed spikelets at the end of every branch.',
    es: 'Una espiga ramificada, con un mechón pequeño de espiguillas cafés y puntiagudas al final de cada rama.',
  },
  hood: {
    en: 'One pointed leaf wrapped like a hood around an upright, fleshy yellow spike.',
    es: 'Una hoja puntiaguda enrollada como capucha alrededor de una espiga carnosa, amarilla y derecha.',
  },
  'blue-spike': {
    en: 'An upright spike crowded with blue flowers of six petals, each flower with a dark dot, and buds at the top.',
    es: 'Una espiga derecha llena de flores azules de seis pétalos, cada flor con un punto oscuro, y botones en la punta.',
  },
  'white-tail': {
    en: 'A fluffy white tail of tiny crowded flowers, thick below, that bends over and thins out to its drooping tip.',
    es: 'Una cola blanca y esponjada de flores diminutas y apretadas, gruesa abajo, que se dobla y se adelgaza hasta la punta colgante.',
  },
  whorls: {
    en: 'White flowers of three round petals that stand in rings, one ring above another, with buds at the top.',
    es: 'Flores blancas de tres pétalos redondos, en anillos uno encima de otro, con botones en la punta.',
  },
  'single-big': {
    en: 'One large bowl-shaped flower with many petals and a yellow middle, alone on a thick stalk.',
    es: 'Una sola flor grande, en forma de tazón, con muchos pétalos y el centro amarillo, en un tallo grueso.',
  },
  'single-leaf': {
    en: 'A leafy stem with single yellow flowers of five petals, each on a stalk that rises where a leaf joins the stem.',
    es: 'Un tallo con hojas y flores amarillas de cinco pétalos, una por una, que salen donde la hoja se une al tallo.',
  },
  'lily-umbel': {
    en: 'Lily-like white flowers that spread from the top of a bare stalk, each with six separate pointed petals and no cup.',
    es: 'Flores blancas como lirios que se abren desde la punta de un tallo sin hojas, con seis pétalos separados, en punta y sin copa.',
  },
  'cup-umbel': {
    en: 'Spidery white flowers at the top of a bare stalk, with six thread-narrow petals and a cup in the middle of each flower.',
    es: 'Flores blancas como arañas en la punta de un tallo sin hojas, con seis pétalos muy angostos y una copa en el centro de cada flor.',
  },
  'showy-spike': {
    en: 'A few large red flowers up a stalk, each with broad petals of unequal size and one narrow lip that rolls down.',
    es: 'Unas pocas flores rojas y grandes a lo largo de un tallo, cada una con pétalos anchos y desiguales y un labio angosto que se enrolla hacia abajo.',
  },
  head: {
    en: 'A small round head of many white, papery, pointed scales on one stalk, like a clover flower.',
    es: 'Una cabecita redonda de muchas escamas blancas, puntiagudas y como de papel, en un solo tallo, parecida a la flor del trébol.',
  },
  'lipped-head': {
    en: 'A bunch of small flowers at the end of a long stalk, each with a notched upper lip and a three-lobed, spotted lower lip.',
    es: 'Un manojo de flores pequeñas al final de un tallo largo, con el labio de arriba partido y el de abajo con tres lóbulos y manchitas.',
  },
  'tiny-umbel': {
    en: 'One ball of tiny flowers, each on its own thread, all from the top of a bare stalk.',
    es: 'Una sola bola de flores diminutas, cada una en su propio hilo, todas desde la punta de un tallo sin hojas.',
  },
  'tiny-rings': {
    en: 'Three rings of tiny flowers around a bare stalk, one above another, with a good stretch of bare stalk between them.',
    es: 'Tres anillos de flores diminutas alrededor de un tallo, uno encima de otro, con un buen tramo de tallo desnudo entre ellos.',
  },
  'small-cross': {
    en: 'Small white flowers of four petals in a cross, bunched at the top, with slender pods below them.',
    es: 'Florecitas blancas de cuatro pétalos en cruz, juntas en la punta, con vainas delgadas más abajo.',
  },
  'powdery-cluster': {
    en: 'An upright cluster of many overlapping, pointed purple buds, dusted with white.',
    es: 'Un racimo derecho de muchos botones morados y puntiagudos, encimados y con polvo blanco.',
  },
};
