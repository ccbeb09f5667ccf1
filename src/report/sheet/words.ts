// What a printed key says of its own, by language. The key's own sentences are translated in the key folder.
import type { Standing } from '../../key/index.ts';
import type { SizeWords } from '../../key/sizes.ts';
import type { Words } from '../../words/index.ts';

/** What it says as the rest of Leadwort does. */
interface CommonWords extends SizeWords {
  readonly status: Readonly<Record<Standing, string>>;
  readonly or: (items: readonly string[]) => string;
}

export interface SheetWords extends CommonWords {
  /** BCP 47 tag of these words. */
  readonly language: string;
  /** Said where a layout is chosen. */
  readonly layout: string;
  readonly layouts: Readonly<Record<'bracketed' | 'indented', string>>;
  readonly print: string;
  readonly edition: (version: string, reviewed: string) => string;
  readonly cautions: string;
  readonly beforeLooking: string;
  readonly ofPlants: string;
  readonly key: string;
  /** How the key is used, a step each. */
  readonly use: Readonly<Record<'bracketed' | 'indented', readonly string[]>>;
  /** A lead that takes what no other lead of its couplet names. */
  readonly otherwise: (others: string) => string;
  readonly usually: string;
  readonly see: (number: number) => string;
  readonly together: string;
  readonly alike: string;
  readonly alikeUse: string;
  /** Two names, each as it is drawn. */
  readonly pair: <Name>(one: Name, other: Name) => readonly (Name | string)[];
  readonly plants: string;
  readonly plantsUse: string;
  readonly common: string;
  readonly scientific: string;
  readonly standing: string;
  readonly couplets: string;
}

type OwnWords = Omit<SheetWords, keyof CommonWords>;

const en: OwnWords = {
  language: 'en',
  layout: 'Layout',
  layouts: {
    bracketed: 'By number: the statements of a step stand together, and a number leads on',
    indented: 'Stepped: what follows a statement stands below it, further in',
  },
  print: 'Print',
  edition: (version, reviewed) => `Edition ${version}, reviewed ${reviewed}`,
  cautions: 'Before you look',
  beforeLooking: 'While you look',
  ofPlants: 'Plants that can hurt',
  key: 'The key',
  use: {
    bracketed: [
      'Start at 1. Read all statements with that number, look at the plant, and choose the one that fits better.',
      'Go on at the number at the end of its line, until a name stands there. A number in parentheses leads back.',
      'When you cannot tell, try both ways. The rest of a statement, after the bold part, helps you choose.',
      'All of us misread a leaf now and then. Before you believe a name, hold it against its look-alikes below.',
    ],
    indented: [
      'Start at 1. Read all statements with that number: they stand equally far in. Choose the one that fits better.',
      'Go on with the statements just below it, until a name stands at the end of the line.',
      'When you cannot tell, try both ways. The rest of a statement, after the bold part, helps you choose.',
      'All of us misread a leaf now and then. Before you believe a name, hold it against its look-alikes below.',
    ],
  },
  otherwise: (others) => `not ${others}`,
  usually: 'usually',
  see: (number) => `see ${number}`,
  together: 'not told apart in this key:',
  alike: 'Look-alikes',
  alikeUse:
    'What tells two plants apart that are taken for each other. Look at more than one thing. What stands in bold is always so; the rest is usually so.',
  pair: (one, other) => [one, ' or ', other],
  plants: 'Plants in this key',
  plantsUse: 'The numbers are those of the statements that lead to the name.',
  common: 'Name',
  scientific: 'Scientific name',
  standing: 'Here',
  couplets: 'At',
};

const es: OwnWords = {
  language: 'es',
  layout: 'Cómo se ordena',
  layouts: {
    bracketed: 'Por números: los enunciados de un paso van juntos, y un número lleva adelante',
    indented: 'Por escalones: lo que sigue a un enunciado va debajo, más adentro',
  },
  print: 'Imprimir',
  edition: (version, reviewed) => `Edición ${version}, revisada el ${reviewed}`,
  cautions: 'Antes de mirar',
  beforeLooking: 'Mientras mira',
  ofPlants: 'Plantas que pueden hacer daño',
  key: 'La clave',
  use: {
    bracketed: [
      'Empiece por el 1. Lea todos los enunciados con ese número, mire la planta y elija el que mejor le quede.',
      'Siga en el número que está al final de la línea, hasta llegar a un nombre. Un número entre paréntesis lleva atrás.',
      'Si no puede decidir, pruebe los dos caminos. Lo que sigue a las letras gruesas le ayuda a elegir.',
      'A todos se nos escapa algo de vez en cuando. Antes de creer un nombre, compárelo abajo con las plantas parecidas.',
    ],
    indented: [
      'Empiece por el 1. Lea todos los enunciados con ese número: empiezan a la misma altura. Elija el que mejor le quede.',
      'Siga con los enunciados que están justo debajo, hasta que al final de la línea haya un nombre.',
      'Si no puede decidir, pruebe los dos caminos. Lo que sigue a las letras gruesas le ayuda a elegir.',
      'A todos se nos escapa algo de vez en cuando. Antes de creer un nombre, compárelo abajo con las plantas parecidas.',
    ],
  },
  otherwise: (others) => `no es: ${others}`,
  usually: 'por lo común',
  see: (number) => `véase ${number}`,
  together: 'esta clave no las distingue:',
  alike: 'Plantas parecidas',
  alikeUse:
    'Lo que distingue a dos plantas que se confunden. Fíjese en más de una cosa. Lo que va en letras gruesas es siempre así; lo demás, por lo común.',
  pair: (one, other) => [one, ' o ', other],
  plants: 'Plantas de esta clave',
  plantsUse: 'Los números son los de los enunciados que llevan al nombre.',
  common: 'Nombre',
  scientific: 'Nombre científico',
  standing: 'Aquí',
  couplets: 'En',
};

/** The sheet's words in the language of these. */
export function sheetWords({
  language,
  common: { status, or },
  question: { under, between, over },
}: Words): SheetWords {
  return { status, or, under, between, over, ...(language === 'es' ? es : en) };
}
