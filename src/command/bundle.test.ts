import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { ROOT, runCommand } from '../../tests/support/run-command.ts';
import { changedKey, temporaryFolder } from '../../tests/support/temporary.ts';
import { readAlbum, readBundle } from '../key/index.ts';

const STREAMBANK = join(ROOT, 'keys/streambank');

describe('a bundle', () => {
  test('is a key, and its sizes and hash are told', async () => {
    const cwd = temporaryFolder();
    const { code, stdout } = await runCommand(['bundle', STREAMBANK, '-o', 'out.json'], { cwd });
    expect(code).toBe(0);
    const path = join(cwd, 'out.json');
    const text = readFileSync(path, 'utf8');
    const { hash, taxa } = readBundle(text);
    const packed = gzipSync(text);
    expect(gunzipSync(packed).toString()).toBe(text);
    expect(taxa).toHaveLength(55);
    const size = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;
    expect(stdout).toMatch(
      /^out\.json: .*\nout\.album\.json: [\d.]+ kB, [\d.]+ kB gzip, \d+ pictures, \d+ terms, \d+ courses\n$/,
    );
    expect(stdout).toContain(`out.json: ${size(statSync(path).size)}, ${size(packed.length)} gzip, ${hash}\n`);
  });

  test('has the SHA-256 of all it holds but the hash, by another implementation', async () => {
    const cwd = temporaryFolder();
    await runCommand(['bundle', STREAMBANK, '-o', 'out.json'], { cwd });
    // The file is canonical JSON, so its fields are written again in the order in which they were read.
    const { hash, ...content } = JSON.parse(readFileSync(join(cwd, 'out.json'), 'utf8'));
    expect(hash).toBe(`sha256-${createHash('sha256').update(JSON.stringify(content)).digest('hex')}`);
  });

  test('replaces an older one, and follows a link instead of replacing it', async () => {
    const cwd = temporaryFolder();
    writeFileSync(join(cwd, 'old.json'), 'old');
    symlinkSync('old.json', join(cwd, 'link.json'));
    expect((await runCommand(['bundle', STREAMBANK, '-o', 'link.json'], { cwd })).code).toBe(0);
    expect(readFileSync(join(cwd, 'old.json'), 'utf8')).toMatch(/^\{/);
    expect(readdirSync(cwd).sort()).toEqual(['link.album.json', 'link.json', 'old.json']);
  });
});

describe('an album', () => {
  test('lies beside the bundle that names it, belongs to its key, and has a SHA-256 of its own', async () => {
    const cwd = temporaryFolder();
    await runCommand(['bundle', STREAMBANK, '-o', 'creek.json'], { cwd });
    const key = readBundle(readFileSync(join(cwd, 'creek.json'), 'utf8'));
    expect(key.album).toBe('creek.album.json');
    const text = readFileSync(join(cwd, 'creek.album.json'), 'utf8');
    const album = readAlbum(text, key);
    expect(album.states.size).toBeGreaterThan(0);
    for (const [state, drawing] of key.opening ?? []) expect(album.states.get(state)?.drawing).toEqual(drawing);
    const { hash, ...content } = JSON.parse(text);
    expect(hash).toBe(`sha256-${createHash('sha256').update(JSON.stringify(content)).digest('hex')}`);
  });

  test('holds the words alone when the list of pictures is not there, which is a warning', async () => {
    const cwd = changedKey({ 'key.json': (text) => text.replace('../../images-placeholder', '../gone') });
    writeFileSync(join(cwd, 'key/glossary.json'), '{"terms":[]}');
    const { code, stderr } = await runCommand(['bundle', 'key', '-o', 'out.json'], { cwd });
    expect({ code, stderr }).toEqual({ code: 0, stderr: expect.stringMatching(/^leadwort: \d+ warnings; /) });
    const { stdout } = await runCommand(['check', 'key'], { cwd });
    expect(stdout).toContain(
      '../gone/manifest.json\n  warning  expected a file that can be read, found there is no such file or folder\n',
    );
  });

  test('is not made for a key without pictures and glossary, whose bundle is as it ever was', async () => {
    const cwd = temporaryFolder();
    const { stdout } = await runCommand(['bundle', join(ROOT, 'tests/fixtures/small-key'), '-o', 'out.json'], { cwd });
    expect(stdout.split('\n')).toHaveLength(2);
    expect(readdirSync(cwd)).toEqual(['out.json']);
    expect(Object.keys(JSON.parse(readFileSync(join(cwd, 'out.json'), 'utf8')))).not.toContain('album');
  });
});

describe('nothing is written, and nothing lost,', () => {
  test('when the folder has errors', async () => {
    const cwd = changedKey({ 'key.json': (text) => text.replace('"units": "us"', '"units": "feet"') });
    writeFileSync(join(cwd, 'out.json'), 'yesterday');
    const { code, stdout, stderr } = await runCommand(['bundle', 'key', '-o', 'out.json'], { cwd });
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toContain('found "feet"');
    expect(stderr).toMatch(/leadwort: out\.json was not written\.\n$/);
    expect(readFileSync(join(cwd, 'out.json'), 'utf8')).toBe('yesterday');
    expect(readdirSync(cwd).sort()).toEqual(['key', 'out.json']);
  });

  test.each(['key/taxa.json', 'key/text/bundle.json', 'link/taxa.json'])(
    'when it would lie in the key folder: %s',
    async (target) => {
      const cwd = changedKey();
      symlinkSync('key', join(cwd, 'link'));
      mkdirSync(join(cwd, 'key/text'), { recursive: true });
      const before = readFileSync(join(cwd, 'key/taxa.json'), 'utf8');
      const { code, stderr } = await runCommand(['bundle', 'key', '-o', target], { cwd });
      expect(code).toBe(1);
      expect(stderr).toBe(`leadwort: ${target}: this lies in the key folder itself; choose a place outside\n`);
      expect(readFileSync(join(cwd, 'key/taxa.json'), 'utf8')).toBe(before);
    },
  );

  test.each([
    ['no/such/out.json', 'there is no such file or folder'],
    ['folder', 'this is a folder where a file is needed'],
    ['x'.repeat(300), 'the name is too long'],
  ])('when the place is no place for it: %s', async (target, why) => {
    const cwd = temporaryFolder();
    mkdirSync(join(cwd, 'folder'));
    const { code, stdout, stderr } = await runCommand(['bundle', STREAMBANK, '-o', target], { cwd });
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toBe(`leadwort: ${target}: ${why}\n`);
    expect(readdirSync(cwd)).toEqual(['folder']);
    expect(readdirSync(join(cwd, 'folder'))).toEqual([]);
  });

  test.skipIf(process.platform === 'win32')('when a pipe or a device stands there', async () => {
    const cwd = temporaryFolder();
    execFileSync('mkfifo', [join(cwd, 'pipe')]);
    const { code, stderr } = await runCommand(['bundle', STREAMBANK, '-o', 'pipe'], { cwd });
    expect(code).toBe(1);
    expect(stderr).toBe('leadwort: pipe: this is no plain file, and cannot be replaced by one\n');
    expect(statSync(join(cwd, 'pipe')).isFIFO()).toBe(true);
  });
});
