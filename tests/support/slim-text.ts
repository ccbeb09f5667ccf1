// What a template loses in a build: only what its author sees.

/** A piece of an element's style sheet between two `${}`: the same rules, without comments and needless spaces. */
export const slimCss = (css: string): string =>
  css
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?([{};]) ?/g, '$1')
    .replace(/([:,]) /g, '$1')
    .replaceAll(';}', '}');

/** A piece of a template: a break with its indentation is one space, as a browser shows it. */
export const slimHtml = (html: string): string => html.replace(/\s*\n\s*/g, ' ');
