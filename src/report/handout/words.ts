// What a hand-out says of its own, by language. Advice and cautions are the key's own sentences.

export interface HandoutWords {
  /** BCP 47 tag of these words. */
  readonly language: string;
  readonly alike: string;
  readonly more: (count: number) => string;
  readonly cautions: string;
  readonly help: string;
  readonly phone: string;
  readonly mail: string;
  /** Where nobody is given: a line to write on follows. */
  readonly write: string;
  readonly none: string;
  readonly onlyIf: (name: string) => string;
  readonly sources: string;
  readonly memory: string;
  readonly edition: (title: string, version: string, reviewed: string) => string;
  readonly picture: (name: string) => string;
}

const en: HandoutWords = {
  language: 'en',
  alike: 'Is it really that one?',
  more: (count) => (count === 1 ? 'The key has 1 more look-alike.' : `The key has ${count} more look-alikes.`),
  cautions: 'Stop: before you do anything',
  help: 'Ask here',
  phone: 'Phone',
  mail: 'Mail',
  write: 'Name and number',
  none: 'This key has no advice on it. Leave it as it is, and ask before you do anything.',
  onlyIf: (name) => `This page holds only if the plant is ${name}. A look-alike would need other care.`,
  sources: 'Where this comes from',
  memory: 'from memory',
  edition: (title, version, reviewed) => `From the key “${title}”, edition ${version}. Looked over on ${reviewed}.`,
  picture: (name) => `${name}, drawn beside something of known size`,
};

const es: HandoutWords = {
  language: 'es',
  alike: '¿De veras es esa?',
  more: (count) => (count === 1 ? 'La clave tiene 1 parecida más.' : `La clave tiene ${count} parecidas más.`),
  cautions: 'Alto: antes de hacer nada',
  help: 'Pregunte aquí',
  phone: 'Teléfono',
  mail: 'Correo',
  write: 'Nombre y número',
  none: 'Esta clave no tiene consejos sobre ella. Déjela como está y pregunte antes de hacer nada.',
  onlyIf: (name) => `Esta hoja vale solo si la planta es ${name}. Una planta parecida pide otro cuidado.`,
  sources: 'De dónde viene esto',
  memory: 'de memoria',
  edition: (title, version, reviewed) => `De la clave «${title}», edición ${version}. Revisada el ${reviewed}.`,
  picture: (name) => `${name}, dibujada junto a algo de tamaño conocido`,
};

const isSpanish = (tag: string): boolean => /^es(-|$)/i.test(tag);

/** For a BCP 47 tag; English for a language that nobody translated. */
export const handoutWords = (tag: string): HandoutWords => (isSpanish(tag) ? es : en);
