// Key folders as the reader takes them: the text of each file by its name in the folder.
import { readdirSync, readFileSync } from 'node:fs';

/** Every JSON file of a folder, given from the repository's root, such as `keys/streambank`. */
export function keyFiles(folder: string): Map<string, string> {
  const root = new URL(`../../${folder}/`, import.meta.url);
  return new Map(
    readdirSync(root, { recursive: true, encoding: 'utf8' })
      .map((name) => name.replaceAll('\\', '/'))
      .filter((name) => name.endsWith('.json'))
      .map((name) => [name, readFileSync(new URL(name, root), 'utf8')]),
  );
}
