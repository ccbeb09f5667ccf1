// What a webmaster pastes, for each way onto a page.

export const WAYS = ['element', 'whole', 'div', 'classic', 'iframe', 'react', 'vue', 'svelte'] as const;
export type Way = (typeof WAYS)[number];

export interface Choice {
  /** Folder of the release on the host, ending with a slash, such as `/leadwort/0.1.0/`. */
  readonly base: string;
  /** Attributes of `<leadwort-key>` that are not as they are without a word; an empty value stands alone. */
  readonly attributes: ReadonlyMap<string, string>;
  /** Custom properties that differ from the key's own, as CSS has them. */
  readonly colours: ReadonlyMap<string, string>;
  /** What is shown until the key is there, and without script. */
  readonly until: { readonly text: string; readonly phone: string };
  /** What the frame is called. */
  readonly title: string;
}

export interface Snippet {
  readonly code: string;
  /** For a style sheet of the page, where colours were chosen; of the frame's own, in its case. */
  readonly css: string;
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

function tag(name: string, attributes: Iterable<readonly [string, string]>, inside: string): string {
  const written = [...attributes].map(([key, value]) => (value === '' ? key : `${key}="${escaped(value)}"`));
  const open = [`<${name}`, ...written].join(written.join(' ').length > 70 ? '\n  ' : ' ');
  return `${open}>${inside === '' ? '' : `\n  ${inside}\n`}</${name}>`;
}

function fallback({ text, phone }: Choice['until']): string {
  if (phone === '') return `<p>${escaped(text)}</p>`;
  return `<p>${escaped(text)} <a href="tel:${escaped(phone)}">${escaped(phone)}</a></p>`;
}

const sheet = (base: string) => `<link rel="stylesheet" href="${escaped(base)}whole/leadwort.css">`;
const script = (src: string, how: string) =>
  `<script ${how === 'defer' ? '' : `${how} `}src="${escaped(src)}"${how === 'defer' ? ' defer' : ''}></script>`;

/** Address of the frame’s page with its options. Addresses among them that do not begin with a slash or a scheme count from that page. */
function frameAddress({ base, attributes }: Choice): string {
  const query = new URLSearchParams([...attributes].map(([name, value]) => [name, value === '' ? 'true' : value]));
  return `${base}frame/leadwort-frame.html?${query}`;
}

export function snippet(way: Way, choice: Choice): Snippet {
  const { base, attributes, colours } = choice;
  const rules = [...colours].map(([name, value]) => `  ${name}: ${value};\n`).join('');
  const selector = way === 'div' ? '[data-leadwort]' : 'leadwort-key';
  return { code: codeOf(), css: rules === '' ? '' : `${selector} {\n${rules}}\n` };

  function codeOf(): string {
    const element = tag('leadwort-key', attributes, fallback(choice.until));
    if (way === 'element')
      return `${sheet(base)}\n${script(`${base}standalone/leadwort.js`, 'type="module"')}\n${element}`;
    if (way === 'whole') return `${sheet(base)}\n${script(`${base}whole/leadwort.js`, 'type="module"')}\n${element}`;
    if (way === 'classic') return `${sheet(base)}\n${script(`${base}whole/leadwort-classic.js`, 'defer')}\n${element}`;
    if (way === 'div') {
      const data = [
        ['data-leadwort', ''] as const,
        ...[...attributes].map(([key, value]) => [`data-${key}`, value] as const),
      ];
      return `${sheet(base)}\n${script(`${base}whole/leadwort-classic.js`, 'defer')}\n${tag('div', data, fallback(choice.until))}`;
    }
    if (way === 'iframe') {
      const frame = [
        ['src', frameAddress(choice)],
        ['title', choice.title],
        ['width', '100%'],
        ['height', '900'],
      ] as const;
      return `${tag('iframe', frame, '')}\n${script(`${base}frame/leadwort-frame-host.js`, 'defer')}`;
    }
    if (way === 'react') {
      // An attribute without a value is `true` there, which sets nothing on an element of this kind before version 19.
      const inside = tag(
        'leadwort-key',
        [...attributes].map(([key, value]) => [key, value || 'true'] as const),
        fallback(choice.until),
      );
      return `import 'leadwort/define';\n\nexport function Key() {\n  return (\n${indented(inside, 4)}\n  );\n}`;
    }
    if (way === 'vue')
      return `<!-- In the build's settings: compilerOptions.isCustomElement = (tag) => tag.startsWith('leadwort-') -->\n<script setup>\nimport 'leadwort/define';\n</script>\n\n<template>\n${indented(element, 2)}\n</template>`;
    return `<script>\n  import 'leadwort/define';\n</script>\n\n${element}`;
  }
}

const indented = (text: string, by: number) => text.replace(/^/gm, ' '.repeat(by));
