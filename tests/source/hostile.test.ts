/** Files that no author writes on purpose, and some that an attacker would. */

import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { collector } from '../../src/diagnostics/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { parseYaml, plain, readFiles } from '../../src/source/index.ts';

function folder(files: Readonly<Record<string, string | Uint8Array>>): string {
  const dir = mkdtempSync(path.join(tmpdir(), 'source-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  for (const [name, data] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(dir, name)), { recursive: true });
    writeFileSync(path.join(dir, name), data);
  }
  return dir;
}

function read(dir: string) {
  const { report, list } = collector(CATALOGUE);
  const files = readFiles(dir, 'shop', report);
  return { files, codes: list().map((d) => `${d.code} ${d.range.file}`), messages: list().map((d) => d.message) };
}

function parse(text: string) {
  const { report, list } = collector(CATALOGUE);
  const node = parseYaml({ file: 'shop/a.yaml', relative: 'a.yaml', text }, report);
  return {
    value: node === undefined ? undefined : plain(node),
    codes: list().map((d) => d.code),
    messages: list().map((d) => d.message),
  };
}

test('a folder that is not there, or is a file', () => {
  expect(read('/no/such/folder').codes).toEqual(['SRC001 shop']);
  expect(read(path.join(folder({ 'a.yaml': 'a: 1' }), 'a.yaml')).codes).toEqual(['SRC001 shop']);
});

test('binary, UTF-16, Latin-1 and oversized files are refused by name, and the others still read', () => {
  const { files, codes } = read(
    folder({
      'a.yaml': 'ok: 1\n',
      'b.yaml': new Uint8Array([0x61, 0x00, 0x62]),
      'c.yaml': new Uint8Array([0xff, 0xfe, 0x61, 0x00]),
      'd.yaml': new Uint8Array([0x6e, 0x3a, 0x20, 0xe9, 0x0a]),
      'e.yaml': 'x'.repeat(3 * 1024 * 1024),
      'f.txt': 'not content',
    }),
  );
  expect(files.filter((f) => f.unread !== true).map((f) => f.relative)).toEqual(['a.yaml']);
  expect(codes).toEqual(['SRC004 shop/b.yaml', 'SRC005 shop/c.yaml', 'SRC005 shop/d.yaml', 'SRC003 shop/e.yaml']);
});

test('a UTF-8 byte order mark does no harm', () => {
  const { files } = read(folder({ 'a.yaml': new Uint8Array([0xef, 0xbb, 0xbf, 0x61, 0x3a, 0x20, 0x31]) }));
  expect(files[0]?.text).toBe('a: 1');
});

test('links that lead out of the folder, to folders, or to themselves are not followed', () => {
  const outside = folder({ 'secret.yaml': 'a: 1' });
  const dir = folder({ 'ok.yaml': 'a: 1' });
  symlinkSync(path.join(outside, 'secret.yaml'), path.join(dir, 'link.yaml'));
  symlinkSync(dir, path.join(dir, 'round'));
  symlinkSync(path.join(dir, 'self.yaml'), path.join(dir, 'self.yaml'));
  const { files, codes } = read(dir);
  expect(files.filter((f) => f.unread !== true).map((f) => f.relative)).toEqual(['ok.yaml']);
  expect(codes).toEqual(['SRC012 shop/link.yaml', 'SRC012 shop/round', 'SRC002 shop/self.yaml']);
});

test('an alias bomb costs nothing', () => {
  const bomb = `a: &a [x,x,x,x,x,x,x,x,x]\n${'bcdefghij'
    .split('')
    .map((c, i) => `${c}: &${c} [${Array.from({ length: 9 }, () => `*${'abcdefghij'[i]}`).join(',')}]`)
    .join('\n')}\n`;
  const started = performance.now();
  const { codes } = parse(bomb);
  expect(new Set(codes)).toEqual(new Set(['SRC008']));
  expect(performance.now() - started).toBeLessThan(2000);
});

test('nesting without end is refused before it is followed', () => {
  expect(parse('['.repeat(100_000)).codes).toEqual(['SRC006']);
  expect(parse(Array.from({ length: 60 }, (_, i) => `${' '.repeat(i)}a:`).join('\n')).codes).toContain('SRC006');
});

test('merge keys, tags and second documents are refused', () => {
  expect(parse('a: { <<: { b: 1 } }\n').codes).toEqual(['SRC008']);
  expect(parse('a: !!js/function "x"\n').codes).toEqual(['SRC008']);
  expect(parse('a: 1\n---\nb: 2\n').codes).toEqual(['SRC011']);
});

test('a key named like the prototype is a key and nothing else', () => {
  const { value } = parse('__proto__: { polluted: yes }\nconstructor: x\n');
  expect(Object.keys(value as object)).toEqual(['__proto__', 'constructor']);
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
});

test('dates stay text, and an unclosed quote is reported where it opens', () => {
  expect(parse('d: 2026-01-02\n').value).toEqual({ d: '2026-01-02' });
  const { report, list } = collector(CATALOGUE);
  parseYaml({ file: 'a', relative: 'a', text: 'a: 1\nb: "x\nc: 2\n' }, report);
  expect(list()[0]?.range.start).toBe(8);
});
