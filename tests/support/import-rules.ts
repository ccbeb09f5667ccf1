// Which folder of src may lean on which: the one direction of imports, as a table and a checker over source text.
import { posix } from 'node:path';
import ts from 'typescript';

interface Rule {
  /** Folders this one may import from, besides itself. `version` and `index` are the files of those names in src. */
  readonly from: readonly string[];
  /** Folders of which only types may be taken: they are gone when the code runs. */
  readonly types?: readonly string[];
  /** Packages it may import; `*` is any, `node` is any module that comes with Node. */
  readonly packages: readonly string[];
}

const lit = ['lit', '@lit/context'];
const below = [
  'engine',
  'key',
  'drawing',
  'session',
  'contexts',
  'words',
  'guidance',
  'practice',
  'report',
  'store',
  'version',
];

export const rules: ReadonlyMap<string, Rule> = new Map([
  ['engine', { from: [], packages: [] }],
  ['words', { from: [], types: ['key'], packages: [] }],
  ['key', { from: ['engine', 'version'], packages: ['ajv', 'ajv-formats'] }],
  ['drawing', { from: ['engine', 'key'], packages: [] }],
  ['session', { from: ['engine', 'key', 'version'], packages: [] }],
  ['guidance', { from: ['engine', 'key', 'words'], types: ['session'], packages: ['point-in-polygon-hao'] }],
  ['report', { from: ['engine', 'key', 'words', 'version'], types: ['session', 'guidance'], packages: ['exifr'] }],
  ['practice', { from: ['engine', 'key', 'drawing', 'session', 'words', 'report'], packages: ['ts-fsrs'] }],
  ['store', { from: ['key', 'session', 'report'], types: ['practice'], packages: ['idb'] }],
  ['contexts', { from: ['engine', 'key', 'session', 'version'], types: ['words'], packages: lit }],
  ['elements', { from: below, packages: [...lit, 'fuse.js'] }],
  ['command', { from: ['engine', 'key', 'drawing', 'practice', 'report', 'words', 'version'], packages: ['node'] }],
  ['site', { from: [...below, 'elements', 'index', 'define'], packages: ['*'] }],
  ['index', { from: [...below, 'elements'], packages: [] }],
  ['mount', { from: [], packages: [] }],
  ['define', { from: [...below, 'elements', 'index', 'mount'], packages: [] }],
  ['frame', { from: ['define'], packages: [] }],
  ['whole', { from: ['define', 'version'], packages: [] }],
  ['version', { from: [], packages: [] }],
]);

/** What would tie the engine to a screen, a clock or chance. */
const impure = new Set(
  'window document globalThis self navigator location localStorage sessionStorage indexedDB fetch process Date performance crypto setTimeout setInterval requestAnimationFrame queueMicrotask console'.split(
    ' ',
  ),
);

interface Import {
  readonly path: string;
  readonly typeOnly: boolean;
  readonly line: number;
}

const parse = (file: string, text: string) => ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
const lineOf = (source: ts.SourceFile, node: ts.Node) =>
  source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;

function everyNode(source: ts.SourceFile, visit: (node: ts.Node) => void): void {
  const walk = (node: ts.Node): void => {
    visit(node);
    ts.forEachChild(node, walk);
  };
  walk(source);
}

/** Whether a statement takes nothing but types, be it `import type { A }` or `import { type A, type B }`. */
function takesTypesOnly(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(node)) return node.isTypeOnly;
  const clause = node.importClause;
  if (!clause) return false;
  if (clause.isTypeOnly) return true;
  const named = clause.namedBindings;
  return (
    !clause.name &&
    !!named &&
    ts.isNamedImports(named) &&
    named.elements.length > 0 &&
    named.elements.every((one) => one.isTypeOnly)
  );
}

function importsOf(source: ts.SourceFile): Import[] {
  const found: Import[] = [];
  const add = (node: ts.Node, path: ts.Node | undefined, typeOnly: boolean) =>
    found.push({
      path: path && ts.isStringLiteralLike(path) ? path.text : '(not a plain string)',
      typeOnly,
      line: lineOf(source, node),
    });
  everyNode(source, (node) => {
    if (ts.isImportDeclaration(node)) add(node, node.moduleSpecifier, takesTypesOnly(node));
    else if (ts.isExportDeclaration(node) && node.moduleSpecifier)
      add(node, node.moduleSpecifier, takesTypesOnly(node));
    else if (ts.isImportTypeNode(node))
      add(node, ts.isLiteralTypeNode(node.argument) ? node.argument.literal : undefined, true);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      add(node, node.arguments[0], false);
  });
  return found;
}

/** The folder of src that a file belongs to, or its bare name when it lies in src itself. */
const layerOf = (file: string) => {
  const [first = '', ...rest] = posix.relative('src', file).split('/');
  return rest.length > 0 ? first : first.replace(/\.ts$/, '');
};

const packageOf = (path: string) =>
  path.startsWith('node:') ? 'node' : path.split('/', path.startsWith('@') ? 2 : 1).join('/');

/** A property or a key that merely has the name is not the thing itself: `plan.window`, `{ document: 1 }`. */
function isOnlyAName(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
  return (
    (ts.isPropertyAssignment(parent) ||
      ts.isPropertySignature(parent) ||
      ts.isPropertyDeclaration(parent) ||
      ts.isMethodDeclaration(parent) ||
      ts.isMethodSignature(parent)) &&
    parent.name === node
  );
}

function impurities(source: ts.SourceFile): string[] {
  const found: string[] = [];
  everyNode(source, (node) => {
    if (ts.isIdentifier(node) && impure.has(node.text) && !isOnlyAName(node))
      found.push(`${source.fileName}:${lineOf(source, node)} mentions ${node.text}`);
    if (
      ts.isIdentifier(node) &&
      node.text === 'Math' &&
      !/^Math\s*\.\s*(?!random\b)\w/.test(source.text.slice(node.getStart(source)))
    )
      found.push(`${source.fileName}:${lineOf(source, node)} may draw from Math.random`);
  });
  return found;
}

/**
 * Faults of one source file, each as `src/engine/x.ts:3 imports src/key/y.ts`; none is the empty list.
 * `file` is its path from the repository's root with forward slashes, `text` what stands in it.
 */
export function faults(file: string, text: string): string[] {
  const layer = layerOf(file);
  const rule = rules.get(layer);
  if (!rule) return [`${file} lies in a folder without a rule: add "${layer}" to import-rules.ts`];
  const source = parse(file, text);
  const wrong = importsOf(source).filter(({ path, typeOnly }) => {
    if (!path.startsWith('.')) {
      return !rule.packages.includes('*') && !rule.packages.includes(packageOf(path));
    }
    const target = posix.join(posix.dirname(file), path);
    const to = layerOf(target);
    return !(to === layer || rule.from.includes(to) || (typeOnly && rule.types?.includes(to)));
  });
  return [
    ...wrong.map(({ path, line }) => {
      const target = path.startsWith('.') ? posix.join(posix.dirname(file), path) : path;
      return `${file}:${line} imports ${target}`;
    }),
    ...(layer === 'engine' ? impurities(source) : []),
  ];
}
