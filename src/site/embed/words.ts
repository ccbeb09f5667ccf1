// What the page says by itself, in both languages.
import type { Why } from './policy/judge.ts';

interface Words {
  readonly until: string;
  readonly frame: string;
  readonly copied: string;
  readonly notCopied: string;
  readonly refused: (ratio: string) => string;
  readonly weak: (ratio: string) => string;
  readonly noPolicy: string;
  readonly reportOnly: string;
  readonly badAddress: string;
  readonly fine: string;
  readonly why: Readonly<Record<Why, (directive: string) => string>>;
  readonly spare: string;
  readonly write: string;
}

const en: Words = {
  until: 'Leave it as it stands, and ask us.',
  frame: 'Which plant is it?',
  copied: 'Copied.',
  notCopied: 'It could not be copied. Select the text and copy it by hand.',
  refused: (ratio) => `That color was not taken: something would have only ${ratio}. The one before it stays.`,
  weak: (ratio) => `Taken, but weak in the sun: the least is ${ratio}. Better have 7 : 1.`,
  noPolicy: 'No policy yet.',
  reportOnly: 'This policy only reports. It stops nothing.',
  badAddress: 'One of the addresses above is not an address. Mend it, and look again.',
  fine: 'Nothing is stopped. The snippet works under this policy.',
  why: {
    source: (directive) => `${directive} stops`,
    nonce: (directive) => `${directive} goes by a nonce. Write the page’s own into the tag of`,
    hash: (directive) =>
      `${directive} has 'strict-dynamic' and hashes. Give the page a nonce, or have the hash listed, for`,
    sandbox: (directive) => `${directive} keeps scripts from running as they need, so it stops`,
    trusted: (directive) => `${directive} does not name lit-html, so this does not start`,
  },
  spare: 'works without it, but less well',
  write: 'Write',
};

const es: Words = {
  until: 'Déjela como está y pregúntenos.',
  frame: '¿Qué planta es?',
  copied: 'Copiado.',
  notCopied: 'No se pudo copiar. Seleccione el texto y cópielo a mano.',
  refused: (ratio) => `Ese color no se aceptó: algo quedaría con solo ${ratio}. Sigue el anterior.`,
  weak: (ratio) => `Aceptado, pero débil bajo el sol: el mínimo es ${ratio}. Mejor 7 : 1.`,
  noPolicy: 'Todavía no hay política.',
  reportOnly: 'Esta política solo informa. No detiene nada.',
  badAddress: 'Una de las direcciones de arriba no es válida. Corríjala y mire otra vez.',
  fine: 'No se detiene nada. El código funciona con esta política.',
  why: {
    source: (directive) => `${directive} detiene`,
    nonce: (directive) => `${directive} usa un nonce. Escriba el de la página en la etiqueta de`,
    hash: (directive) =>
      `${directive} tiene 'strict-dynamic' y hashes. Dé a la página un nonce, o incluya el hash, para`,
    sandbox: (directive) => `${directive} no deja correr los scripts como lo necesitan, y así detiene`,
    trusted: (directive) => `${directive} no nombra lit-html, y por eso no arranca`,
  },
  spare: 'funciona sin esto, pero menos bien',
  write: 'Escriba',
};

export const words = (language: string): Words => (language.startsWith('es') ? es : en);
