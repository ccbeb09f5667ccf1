// What is to be seen on a drawing of a size, in words: the size in both units, and what stands beside it.

interface Said {
  readonly en: string;
  readonly es: string;
}

/** A number with as many decimals as it needs to two figures. */
const rounded = (value: number): string => String(Number(value.toPrecision(2)));

/** A length in centimetres, metric first, with the unit of the United States in brackets. */
export function spoken(cm: number): Said {
  if (cm >= 100) {
    const [m, ft] = [rounded(cm / 100), rounded(cm / 30.48)];
    return { en: `${m} m (${ft} ft)`, es: `${m} m (${ft} pies)` };
  }
  const inches = cm / 2.54;
  const metric = cm < 1 ? `${rounded(cm * 10)} mm` : `${rounded(cm)} cm`;
  const said = inches < 0.1 ? inches.toFixed(2) : rounded(inches);
  return { en: `${metric} (${said} in)`, es: `${metric} (${said} ${said === '1' ? 'pulgada' : 'pulgadas'})` };
}

/** How far up a person a plant reaches; `share` of the stature. */
function reaching(share: number): Said {
  if (share < 0.12) return { en: 'no higher than the ankle', es: 'no pasa del tobillo' };
  if (share < 0.33) return { en: 'up to the knee', es: 'llega hasta la rodilla' };
  if (share < 0.65) return { en: 'up to the waist', es: 'llega hasta la cintura' };
  if (share < 0.85) return { en: 'up to the shoulder', es: 'llega hasta el hombro' };
  if (share < 1.25) return { en: 'about up to the top of the head', es: 'llega más o menos hasta la coronilla' };
  const times = Math.round(share * 2) / 2;
  if (times === 2) return { en: "about twice the person's height", es: 'mide más o menos el doble que la persona' };
  return {
    en: `about ${times} times the person's height`,
    es: `mide unas ${times} veces la altura de la persona`,
  };
}

export function tall(cm: number, share: number): Said {
  const [size, reach] = [spoken(cm), reaching(share)];
  return {
    en: `A plant about ${size.en} tall beside a standing person: ${reach.en}.`,
    es: `Una planta de unos ${size.es} de alto junto a una persona de pie: ${reach.es}.`,
  };
}

const THINGS = {
  leaf: { en: 'A leaf', es: 'Una hoja' },
  head: { en: 'A flower head', es: 'Un penacho' },
  stem: { en: 'A stem', es: 'Un tallo' },
  skin: { en: 'A thin skin at the collar of the leaf,', es: 'Una piel delgada en el cuello de la hoja,' },
} as const;
const WAYS = {
  long: { en: 'long', es: 'de largo', less: 'shorter', more: 'longer', menos: 'más corta', mas: 'más larga' },
  wide: { en: 'wide', es: 'de ancho', less: 'narrower', more: 'wider', menos: 'más angosta', mas: 'más ancha' },
  thick: { en: 'thick', es: 'de grueso', less: 'thinner', more: 'thicker', menos: 'más delgada', mas: 'más gruesa' },
  high: { en: 'high', es: 'de alto', less: 'lower', more: 'higher', menos: 'más baja', mas: 'más alta' },
} as const;
const YARDS = {
  coin: { en: 'the quarter', es: 'la moneda de 25 centavos' },
  straw: { en: 'the drinking straw', es: 'el popote' },
  pencil: { en: 'the pencil', es: 'el lápiz' },
  finger: { en: 'the finger', es: 'el dedo' },
  thumb: { en: 'the thumb', es: 'el pulgar' },
  fingers: { en: 'the three fingers', es: 'los tres dedos' },
  palm: { en: 'the palm of the hand', es: 'la palma de la mano' },
  hand: { en: 'the hand', es: 'la mano' },
  handLength: { en: 'the length of the hand', es: 'el largo de la mano' },
  forearm: { en: 'the forearm and hand', es: 'el antebrazo con la mano' },
  arm: { en: 'the arm', es: 'el brazo' },
  person: { en: 'the person', es: 'la persona de pie' },
  rule: { en: 'a ruler marked in millimeters', es: 'una regla marcada en milímetros' },
} as const;

/** `ratio`: the size over that of what is beside it, when the two are compared. */
export function beside(
  thing: keyof typeof THINGS,
  way: keyof typeof WAYS,
  cm: number,
  yard: keyof typeof YARDS,
  ratio?: number,
): Said {
  const [size, what, how, by] = [spoken(cm), THINGS[thing], WAYS[way], YARDS[yard]];
  const same = ratio !== undefined && ratio >= 0.85 && ratio <= 1.2;
  // Spanish adjectives agree with the thing: leaves and skins are feminine, stems and plumes masculine.
  const agreed = (word: string): string => (what.es.startsWith('Una') ? word : word.replace(/a$/, 'o'));
  const en =
    ratio === undefined ? 'beside' : same ? `about as ${how.en} as` : `${ratio < 1 ? how.less : how.more} than`;
  const es =
    ratio === undefined ? 'junto a' : same ? 'más o menos como' : `${agreed(ratio < 1 ? how.menos : how.mas)} que`;
  const comma = ratio === undefined ? '' : ',';
  const after = ratio === undefined ? '' : ' beside it';
  const junto = ratio === undefined ? '' : ' de al lado';
  return {
    en: `${what.en} about ${size.en} ${how.en}${comma} ${en} ${by.en}${after}.`,
    es: `${what.es} de unos ${size.es} ${how.es}${comma} ${es} ${by.es}${junto}.`,
  };
}
