import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ROOT, runCommand } from '../../tests/support/run-command.ts';
import { temporaryFolder } from '../../tests/support/temporary.ts';
import { readBundle } from '../key/index.ts';

const json = (path: string) => JSON.parse(readFileSync(path, 'utf8'));

describe('a new key folder', () => {
  test('has nothing wrong with it, not even a warning, in both languages', async () => {
    const cwd = temporaryFolder();
    const { code, stderr } = await runCommand(['new', 'creek'], { cwd });
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    const checked = await runCommand(['check', 'creek', '--json'], { cwd });
    const { problems, counts } = JSON.parse(checked.stdout);
    expect(problems).toEqual([]);
    expect(counts).toMatchObject({ taxa: 2, pairs: 1, languages: 2, guidance: 2 });
  });

  test('gets couplets and a bundle by the commands that its instructions give', async () => {
    const cwd = temporaryFolder();
    await runCommand(['new', 'by the creek'], { cwd });
    const text = readFileSync(join(cwd, 'by the creek/README.md'), 'utf8');
    const lines = [...text.matchAll(/^leadwort (.*?) {3}# /gm)].map(([, line = '']) =>
      [...line.matchAll(/'([^']*)'|(\S+)/g)].map(([, inside, plain]) => inside ?? plain ?? ''),
    );
    expect(lines.map(([name]) => name)).toEqual(['check', 'couplets', 'bundle']);
    for (const words of lines) expect((await runCommand(words, { cwd })).code).toBe(0);
    const key = readBundle(readFileSync(join(cwd, 'by the creek.bundle.json'), 'utf8'));
    expect(key.id).toBe('by-the-creek');
    expect(key.couplets.length).toBeGreaterThan(0);
    expect(readFileSync(join(cwd, 'by the creek/LEAME.md'), 'utf8').match(/^leadwort .*? {3}# /gm)).toEqual(
      text.match(/^leadwort .*? {3}# /gm),
    );
  });

  test('tells in each file how to change it', async () => {
    const cwd = temporaryFolder();
    const { stdout } = await runCommand(['new', 'creek'], { cwd });
    const names = stdout.split('\n').filter((line) => line.endsWith('.json'));
    expect(names).toHaveLength(6);
    for (const name of names) expect(json(join(cwd, name)).$comment.length).toBeGreaterThan(40);
  });

  test('says no more of its plants than the key it was taken from', async () => {
    const cwd = temporaryFolder();
    await runCommand(['new', 'creek'], { cwd });
    const whole = new Map(
      json(join(ROOT, 'keys/streambank/taxa.json')).taxa.map((one: { id: string }) => [one.id, one]),
    );
    for (const { id, traits } of json(join(cwd, 'creek/taxa.json')).taxa) {
      const { traits: known } = whole.get(id) as { traits: Record<string, unknown> };
      for (const [character, trait] of Object.entries(traits))
        expect({ character, trait }).toEqual({ character, trait: known[character] });
    }
    for (const file of ['sources', 'guidance'] as const) {
      const ours = json(join(cwd, `creek/${file}.json`));
      const theirs = json(join(ROOT, `keys/streambank/${file}.json`));
      if (file === 'sources') expect(theirs.sources).toEqual(expect.arrayContaining(ours.sources));
      else
        for (const { taxon, statements } of ours.entries)
          expect(theirs.entries.find((one: { taxon: string }) => one.taxon === taxon).statements).toEqual(
            expect.arrayContaining(statements),
          );
    }
  });

  test.each([
    ['creek', 'creek'],
    ['Río Frío 2', 'rio-frio-2'],
    ['2026', 'new-key'],
    ['---', 'new-key'],
  ])('in the folder %s has the id %s', async (folder, id) => {
    const cwd = temporaryFolder();
    expect((await runCommand(['new', '--', folder], { cwd })).code).toBe(0);
    expect(json(join(cwd, folder, 'key.json')).id).toBe(id);
  });

  test('may take the place of an empty one, and lie in others that are not there yet', async () => {
    const cwd = temporaryFolder();
    mkdirSync(join(cwd, 'empty'));
    expect((await runCommand(['new', 'empty'], { cwd })).code).toBe(0);
    expect((await runCommand(['new', 'a/b/c/'], { cwd })).code).toBe(0);
    expect(statSync(join(cwd, 'a/b/c/text/es.json')).isFile()).toBe(true);
  });

  test('is not made where something lies already, which stays as it is', async () => {
    const cwd = temporaryFolder();
    mkdirSync(join(cwd, 'mine'));
    writeFileSync(join(cwd, 'mine/notes.txt'), 'ours');
    writeFileSync(join(cwd, 'file'), 'ours');
    expect(await runCommand(['new', 'mine'], { cwd })).toEqual({
      code: 1,
      stdout: '',
      stderr: 'leadwort: mine: this folder is not empty (notes.txt); name a new one, and nothing is lost\n',
    });
    expect(await runCommand(['new', 'file'], { cwd })).toMatchObject({
      code: 1,
      stderr: 'leadwort: file: this is a file where a folder is needed\n',
    });
    expect(readdirSync(join(cwd, 'mine'))).toEqual(['notes.txt']);
    expect(readFileSync(join(cwd, 'file'), 'utf8')).toBe('ours');
  });
});
