import type { CrewWords } from './crew.words.ts';

const plural = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const NUMBERS = ['ningún', 'un', 'dos', 'tres', 'cuatro', 'cinco', 'seis'];

export const crew: CrewWords = {
  heading: 'La cuadrilla',
  intro:
    'Abra los archivos que sus técnicos guardaron en la sala de práctica. Se leen aquí y se quedan en este aparato.',
  open: 'Abrir archivos de práctica',
  drop: 'o suéltelos aquí',
  examples: (n) => `Abrir ${NUMBERS[n] ?? n} ${n === 1 ? 'archivo' : 'archivos'} de ejemplo`,
  notFetched: (address) => `No se pudo traer ${address}. Revise la conexión e inténtelo de nuevo.`,
  day: 'Al día',
  dayHelp: 'Los vistazos posteriores a este día no se cuentan.',
  people: 'Quiénes están aquí',
  seen: (looks, last) =>
    last === undefined
      ? plural(looks, 'vistazo', 'vistazos')
      : `${plural(looks, 'vistazo', 'vistazos')}, el último el ${last}`,
  remove: (name) => `Quitar a ${name}`,
  removed: (name) => `Se quitó a ${name}. El archivo sigue como estaba.`,
  opened: (n) => `${plural(n, 'archivo abierto', 'archivos abiertos')}.`,
  nobody: 'Aún no hay archivos abiertos.',
  otherKey: (name, key) => `El archivo de ${name} es de otra clave (${key}) y no se cuenta.`,
  conflicts: (n) =>
    `Dos archivos de la misma persona cuentan de otro modo ${plural(n, 'vistazo', 'vistazos')}. Vale lo más reciente.`,
  ready: 'Quién está listo para qué',
  readySays: 'Toque una casilla para leer qué regla decidió.',
  readyOf: (n, all) => `${n} de ${all} plantas`,
  teach: 'Qué enseñar la próxima semana',
  teachSays:
    'Primero donde se llamó invasora a una nativa, luego lo que con más certeza sale mal. Todos los vistazos de todos, juntos.',
  teachNone: 'Nada sobresale. Que sigan practicando.',
  wrongOf: (wrong, n) => `${wrong} de ${n} mal`,
  likely: (low, high) => `lo más probable: entre ${low} y ${high} de las veces`,
  alarms: (n) => plural(n, 'vez se llamó invasora a una nativa', 'veces se llamó invasora a una nativa'),
  readsWrong: (character) => `Leer: ${character}`,
  missed: (plant) => `${plant}, con cualquiera que se confunda`,
  avoid: 'Caracteres que su cuadrilla lee mal más de lo que la clave supone',
  avoidSays:
    'La raya es lo que supone la clave. La línea es donde lo más probable es que esté la verdad, 19 de cada 20 veces.',
  avoidNone: (least) =>
    `Ninguno, hasta donde estos vistazos alcanzan. De un carácter leído menos de ${least} veces no se dice nada.`,
  keySays: 'La clave supone',
  agree: 'Si dos dicen lo mismo',
  agreeSays:
    'Del mismo ejemplar, preguntado del mismo modo. Kappa es el acuerdo más allá del azar: 0 es puro azar, 1 es siempre. Dos pueden coincidir y equivocarse ambos.',
  agreeNone: 'Todavía no hay dos que hayan hecho la misma tarea. Los que hacen la misma prueba final, sí.',
  agreeAlone: 'Para esto hacen falta los archivos de dos personas.',
  nothingShared: (pairs) => `Todavía sin tareas en común: ${pairs}`,
  pair: (one, other) => `${one} y ${other}`,
  two: 'Dos personas',
  shared: 'Tareas de ambas',
  same: 'Dijeron lo mismo',
  beyondChance: 'Kappa, y dónde está lo más probable',
  noKappa: 'no se puede decir: ambas usaron siempre un solo nombre',
  cover: 'Si dos estiman igual la cobertura',
  coverSays:
    'Lo que dice la primera persona menos lo que dice la segunda, en por ciento del suelo. Se espera que el 95 % de las diferencias quede entre los límites.',
  difference: 'Diferencia media',
  limits: 'Límites',
  points: (n) => `${n} puntos`,
  tooFew: 'muy pocas para decirlo',
  take: 'Para llevar',
  csvPlants: 'Guardar una tabla: una línea por persona y planta',
  csvAttempts: 'Guardar una tabla: una línea por vistazo',
  print: 'Imprimir esta página',
  unnamed: (n) => `Alguien ${n}`,
  learn: 'Para que la clave aprenda de estos vistazos, ponga los archivos en una carpeta y ejecute:',
};
