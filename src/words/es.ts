// Spanish, written for landowners and crews of the south-central United States.
import { oddsOf } from './odds.ts';
import type { Words } from './words.ts';

const odds = (probability: number): string => {
  const { kind, of, number } = oddsOf(probability);
  const words = `${number} de cada ${of}`;
  return kind === 'about'
    ? `unas ${words} veces`
    : kind === 'more-than'
      ? `más de ${words} veces`
      : `menos de ${words} veces`;
};
const list = (type: 'conjunction' | 'disjunction') => (items: readonly string[]) =>
  new Intl.ListFormat('es', { type }).format(items);

export const es: Words = {
  language: 'es',
  common: {
    loading: 'La clave está en camino.',
    failed: 'No se pudo abrir la clave.',
    retry: 'Intentar otra vez',
    close: 'Cerrar',
    change: 'Cambiar',
    remove: 'Quitar',
    source: 'Fuente',
    memory: 'De memoria, no leído en una fuente',
    months: {
      1: 'enero',
      2: 'febrero',
      3: 'marzo',
      4: 'abril',
      5: 'mayo',
      6: 'junio',
      7: 'julio',
      8: 'agosto',
      9: 'septiembre',
      10: 'octubre',
      11: 'noviembre',
      12: 'diciembre',
    },
    status: { native: 'nativa', introduced: 'introducida', invasive: 'invasora' },
    part: {
      whole: 'Planta entera',
      place: 'Dónde está',
      leaf: 'Hoja',
      collar: 'Donde la hoja deja el tallo',
      stem: 'Tallo',
      flower: 'Flores',
      fruit: 'Fruto y semilla',
      sap: 'Savia',
      underground: 'Bajo tierra',
    },
    odds,
    list: list('conjunction'),
    or: list('disjunction'),
  },
  key: { month: 'Mes', observer: 'Quién mira', restart: 'Empezar con otra planta' },
  question: { number: (n) => `Pregunta ${n}` },
  trail: { heading: 'Lo que ha visto' },
  standing: { heading: 'Qué puede ser' },
  verdict: { heading: 'Qué se puede decir' },
  guidance: {
    topic: {
      harm: 'Qué le hace al arroyo',
      leave: 'Por qué dejarla',
      benefit: 'Qué bien hace',
      spread: 'Cómo se extiende',
      dont: 'No haga',
      do: 'Haga',
      when: 'Cuándo',
      who: 'Quién puede ayudar',
      safety: 'Cuídese',
      disposal: 'Qué hacer con los pedazos',
      followup: 'Por cuánto tiempo',
      legal: 'Qué dice la ley',
      photos: 'Fotos que ayudan',
    },
  },
  names: { label: 'Buscar un nombre' },
};
