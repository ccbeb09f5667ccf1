// Writes the .d.ts files of the public entries beside the built modules, with the one tsconfig.json.
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { publicEntries } from './public-entries.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));
const host = { getCurrentDirectory: () => root, getCanonicalFileName: (f) => f, getNewLine: () => '\n' };
const { config, error } = ts.readConfigFile(`${root}tsconfig.json`, ts.sys.readFile);
const read = ts.parseJsonConfigFileContent(config ?? {}, ts.sys, root, {
  noEmit: false,
  declaration: true,
  // They lead to the sources, which are in the package.
  declarationMap: true,
  emitDeclarationOnly: true,
  rootDir: `${root}src`,
  outDir: `${root}dist/esm`,
  types: [],
});
const program = ts.createProgram(
  publicEntries().map((file) => `${root}${file}`),
  read.options,
);
const faults = [...(error ? [error] : []), ...ts.getPreEmitDiagnostics(program), ...program.emit().diagnostics];
if (faults.length > 0) {
  console.error(ts.formatDiagnostics(faults, host));
  process.exit(1);
}
