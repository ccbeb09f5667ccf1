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
  key: {
    mistakes: 'Esta clave tiene errores y no se puede usar. La persona que la cuida necesita ver esto:',
    moreMistakes: (n) => `y ${n} más`,
    missing: 'Una parte de esta página no llegó. Revise su conexión.',
    settings: 'Ajustes',
    month: 'Mes',
    units: 'Medidas',
    system: { us: 'Pulgadas y pies', metric: 'Centímetros y metros' },
    observer: 'Quién está mirando',
    observers: new Map([
      ['novice', 'Alguien que empieza con las plantas'],
      ['technician', 'Alguien capacitado para este trabajo'],
      ['botanist', 'Alguien que estudió botánica'],
    ]),
    language: 'Idioma',
    lookup: '¿Sabe un nombre? Búsquelo',
    restart: 'Empezar con otra planta',
    restartSure: 'Toque otra vez: se borrarán sus respuestas',
  },
  question: {
    number: (n) => `Pregunta ${n}`,
    again: (n) => `Pregunta ${n} otra vez`,
    help: 'Cómo mirar',
    trade: (words) => `En botánica se llama: ${words}`,
    careful: 'Cuidado',
    dig: 'No excave ni arranque. Responda solo si el agua ya la dejó al descubierto.',
    ticked: (n) =>
      n === 0
        ? 'Marque todo lo que podría ser.'
        : n === 1
          ? '¿Podría ser otra también? Entonces marque las dos.'
          : `Podría ser cualquiera de estas ${n}.`,
    showAll: (n) => `Ver las ${n}`,
    under: (size) => `menos de ${size}`,
    between: (from, to) => `de ${from} a ${to}`,
    over: (size) => `más de ${size}`,
    type: 'Mejor escribo un número',
    length: 'Largo',
    count: 'Número',
    unit: 'Unidad',
    unitName: { mm: 'mm', cm: 'cm', m: 'm', in: 'pulgadas', ft: 'pies' },
    wrongLength: (unit) => `Escriba una medida en ${unit}, por ejemplo 3.5`,
    wrongCount: 'Escriba un número, por ejemplo 6',
    cannotTell: 'No sé decir',
    howSure: '¿Qué tan segura es su respuesta?',
    sureness: { sure: 'Segura', think: 'Creo que sí', guess: 'Adivino' },
    keep: 'Dejarla como estaba',
    back: 'Volver a la pregunta que sigue',
    else: 'Mirar otra cosa',
    mark: {
      skipped: 'no se vio',
      hidden: (month) => `en ${month} no se ve`,
      dig: 'bajo tierra: solo si está al descubierto',
    },
    settled: 'Con esto basta para decir algo.',
    onward: 'Mirar más detalles',
    exhausted: 'No queda nada en esta clave que ayude más.',
  },
  trail: {
    heading: 'Lo que ha visto',
    empty: 'Todavía no ha mirado nada.',
    skipped: 'no se vio',
    more: (n) => `y ${n} más`,
    sureness: { sure: 'con seguridad', think: 'cree que sí', guess: 'adivinando' },
  },
  standing: {
    heading: 'Qué puede ser',
    all: (n) => (n === 1 ? 'Esta clave tiene 1 planta.' : `Esta clave tiene ${n} plantas.`),
    fitting: (n) => `Todavía caben ${n} plantas; ninguna destaca aún.`,
    leading: (n, name, odds) =>
      n === 1
        ? `Queda 1 planta: ${name}, ${odds}.`
        : `Todavía caben ${n} plantas; la más probable es ${name}, ${odds}.`,
    outside: (n) => `Probablemente ninguna de las ${n} plantas de esta clave.`,
    open: 'Ver las plantas',
    close: 'Cerrar la lista',
    more: (n) => `Mostrar las ${n} plantas`,
    fewer: 'Mostrar menos',
    notHere: 'Ninguna de estas: una planta que esta clave no tiene',
    why: 'Por qué',
    for: 'A favor',
    against: 'En contra',
    nothing: 'Ninguna de sus respuestas dice mucho de ella.',
    unseen: (n) =>
      n === 0
        ? 'Ya miró todo lo que ahora se puede ver de ella.'
        : n === 1
          ? 'Falta mirar 1 de sus rasgos.'
          : `Falta mirar ${n} de sus rasgos.`,
  },
  verdict: {
    heading: 'Qué se puede decir',
    settled: (name) => `Lo más probable es que sea ${name}`,
    leaning: (name) => `Se inclina hacia ${name}`,
    open: 'Es pronto para decirlo',
    outside: 'Probablemente no es una planta de esta clave',
    couldBe: (names) => `Puede ser ${names}.`,
    sure: (odds, n) => `Acierta ${odds}, según ${n === 1 ? 'su única respuesta' : `sus ${n} respuestas`}.`,
    stillNative: (odds) => `Todavía puede ser una planta nativa: ${odds}.`,
    stillConcern: (odds) => `Todavía puede ser una planta invasora: ${odds}.`,
    stop: 'Alto',
    openNext: 'Unas respuestas más ayudarán.',
    openEnd:
      'No queda aquí nada más que preguntar que ayude. Tome fotos y pregunte a una persona que conozca las plantas.',
    outsideSure: (odds) => `Que no sea ninguna de las plantas de aquí: ${odds}.`,
    outsideDo: [
      'Déjela donde está.',
      'Tome fotos desde un lugar seguro: la planta entera, una hoja por los dos lados, el pie del tallo y las flores o frutos que tenga. Ponga la mano o una moneda al lado para ver el tamaño.',
      'Enséñeselas a una persona que conozca las plantas. Puede ser algo nuevo en este lugar.',
    ],
    inTheWay: 'Qué falta para estar más seguros',
    doubt: {
      weight: 'Sus respuestas todavía dejan lugar a otras plantas.',
      'look-alikes': 'Falta comprobar una planta que se le parece mucho. Vea abajo.',
      natives:
        'Todavía cabe una planta nativa. Tomar una nativa por invasora es el peor error aquí, por eso la clave no se decide.',
    },
    alike: (name) => `Se confunden con ${name}`,
    tested: 'ya distinguida',
    untested: 'sin comprobar',
    partly: (told, needs) => `${told} de ${needs} comprobaciones hechas`,
    moreAlike: (n) => (n === 1 ? '1 más que se le parece' : `${n} más que se le parecen`),
    look: 'Mirar esto ahora',
    answered: (answer) => `Usted respondió: ${answer}`,
    hidden: 'No se ve en este mes.',
    dig: 'Está bajo tierra. No escarbe: déjelo a un especialista.',
    recheck: 'El resultado depende de una sola respuesta. Vale la pena mirar otra vez.',
    lookAgain: (character) => `Mirar otra vez: ${character}`,
    why: 'Por qué lo dice la clave',
  },
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
    heading: (name) => `Qué hacer con ${name}`,
    onlyIf: (name) => `Este consejo vale solo si es ${name}. Una planta parecida pide otro cuidado.`,
    none: (name) => `Esta clave no tiene consejos sobre ${name}. Déjela como está y pregunte antes de hacer nada.`,
    reviewed: (date) => `Última revisión: ${date}.`,
    sources: (n) => (n === 1 ? 'De dónde viene esto' : `De dónde viene esto: ${n} fuentes`),
    newTab: 'se abre en otra pestaña',
    span: (from, to) => (from === to ? from : `${from} a ${to}`),
    year: 'todo el año',
    band: (months, now) => `${months}. Ahora es ${now}.`,
  },
  names: {
    label: 'Buscar un nombre',
    hint: 'Común o en latín, en español o en inglés. No tiene que ser exacto.',
    count: (n) => (n === 0 ? 'Ninguna planta' : n === 1 ? '1 planta' : `${n} plantas`),
    none: 'Ninguna planta de esta clave lleva ese nombre. Tal vez esté con otro: guíese por lo que ve.',
    shared: (name) => `Varias plantas se llaman «${name}»`,
    sharedHelp: 'El nombre solo no las distingue. Lo que usted ve, sí.',
    other: 'También se llama',
    now: (odds) => `Según sus respuestas: ${odds}`,
    alike: 'Se confunde con',
    tell: 'Cómo distinguirlas',
    check: 'Comprobarla por sus rasgos',
  },
};
