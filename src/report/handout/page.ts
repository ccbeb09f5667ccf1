// A hand-out as a page: two columns on one side of A4 or Letter.

import { looks, ROUND } from '../../key/album/looks.ts';
import type { Drawing } from '../../key/index.ts';
import type { Handout, HandoutName } from './handout.ts';
import { asText, type Piece, type Tagged, tag } from './piece.ts';
import { handoutStyle } from './style.ts';

/** A drawing of the plant, such as `portraitOf` makes. */
export interface HandoutPicture {
  readonly box: readonly [width: number, height: number];
  readonly parts: readonly { readonly at?: string; readonly marks: Drawing }[];
}

const p = tag('p');
const b = tag('b');
const list = (items: readonly Piece[]): Tagged => tag('ul')(...items.map((item) => tag('li')(item)));

/** Attributes as they are written: `fill="none" stroke-width="2"`. */
const attributesOf = (text: string): Record<string, string> =>
  Object.fromEntries([...text.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name = '', value = '']) => [name, value]));

function drawn({ box: [width, height], parts }: HandoutPicture, label: string): Tagged {
  const svg = tag('svg', {
    ...attributesOf(ROUND),
    viewBox: `0 0 ${width} ${height}`,
    class: 'picture',
    role: 'img',
    'aria-label': label,
  });
  return svg(
    ...parts.map(({ at, marks }) =>
      tag(
        'g',
        at === undefined ? {} : { transform: at },
      )(...marks.map(([pen, d]) => tag('path', { ...attributesOf(looks(pen)), class: pen, d })())),
    ),
  );
}

const latin = (name: string): Tagged => tag('i', { lang: 'la' })(name);

function shownName({ common, scientific }: HandoutName): readonly Piece[] {
  return common === scientific ? [latin(scientific)] : [b(common), ' ', latin(scientific)];
}

/** What stands in the body. All text comes from the hand-out; nothing of it is markup. */
export function handoutPage(handout: Handout, picture?: HandoutPicture): Tagged {
  const { words, name, status, alike, moreAlike, topics, cautions, sources, edition } = handout;
  const standing = (one: HandoutName) => tag('span', `status ${one.status}`)(status[one.status]);
  const help = topics.find(({ topic }) => topic === 'who');
  return tag('article', { class: 'handout', lang: handout.language })(
    tag('header')(
      ...(picture && picture.parts.length > 0 ? [drawn(picture, words.picture(name.common))] : []),
      tag('div')(
        tag('h1')(name.common === name.scientific ? latin(name.scientific) : name.common),
        p(...(name.common === name.scientific ? [] : [latin(name.scientific), ' ']), standing(name)),
        tag('p', 'only')(words.onlyIf(name.common)),
      ),
    ),
    tag('div', 'columns')(
      ...(cautions.length > 0 ? [tag('section', 'stop')(tag('h2')(words.cautions), list(cautions))] : []),
      ...(alike.length > 0
        ? [
            tag('section', 'alike')(
              tag('h2')(words.alike),
              ...alike.map((other) =>
                p(...shownName(other.name), ' ', standing(other.name), `: ${other.tells.join(' ')}`),
              ),
              ...(moreAlike > 0 ? [tag('p', 'quiet')(words.more(moreAlike))] : []),
            ),
          ]
        : []),
      ...(topics.length === 0 ? [p(words.none)] : []),
      ...topics
        .filter(({ topic }) => topic !== 'who')
        .map(({ topic, heading, said }) =>
          tag('section', topic)(tag('h2')(heading), list(said.map((one) => told(one)))),
        ),
      tag('section', 'who')(
        tag('h2')(words.help),
        ...(help ? [list(help.said.map((one) => told(one)))] : []),
        ...contactLines(handout),
      ),
    ),
    tag('footer')(
      p(edition),
      ...(sources.length > 0
        ? [
            p(
              b(`${words.sources}: `),
              sources
                .map((source, i) => {
                  const { title, institution, year, kind } = source;
                  if (kind === 'memory') return `${i + 1} ${words.memory}`;
                  return `${i + 1} ${[title, institution, year].filter((one) => one).join(', ')}`;
                })
                .join('; '),
              '.',
            ),
          ]
        : []),
    ),
  );
}

const told = ({ text, sources }: Handout['topics'][number]['said'][number]): Tagged =>
  tag('span')(text, ...(sources.length > 0 ? [tag('sup')(sources.join(', '))] : []));

function contactLines({ words, contact: { phone, mail } }: Handout): Tagged[] {
  const line = (label: string, text: string) => tag('p', 'contact')(b(`${label}: `), text);
  if (!phone && !mail) return [tag('p', 'contact write')(`${words.write}:`)];
  return [...(phone ? [line(words.phone, phone)] : []), ...(mail ? [line(words.mail, mail)] : [])];
}

/** A file of its own that needs nothing else: no script, nothing loaded. */
export function handoutFile(handout: Handout, picture?: HandoutPicture): string {
  const title = asText(handout.name.common);
  return `<!doctype html>
<html lang="${asText(handout.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${title}</title>
<style>${handoutStyle}</style>
</head>
<body>${asText(handoutPage(handout, picture))}
</body>
</html>
`;
}
