/** Files that are there and cannot be read: one report each, and nothing of what they hold is called missing. */

import { mkdirSync, mkdtempSync, rmSync, symlinkSync, unlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { compileShop, runExample } from '../../src/pipeline/index.ts';
import { type Edit, EXAMPLE_SHOP } from '../../src/rules/index.ts';

const FILES = Object.keys(EXAMPLE_SHOP);
const bytes = (file: string): Uint8Array => new TextEncoder().encode(EXAMPLE_SHOP[file]);

/** UTF-16, little end first, with its mark (memory: the Unicode standard, section 23.8). */
function utf16(text: string): Uint8Array {
  const out = [0xff, 0xfe];
  for (let i = 0; i < text.length; i++) out.push(text.charCodeAt(i) & 0xff, text.charCodeAt(i) >> 8);
  return Uint8Array.from(out);
}

const WAYS: readonly (readonly [
  title: string,
  code: string,
  edit: (file: string) => Edit,
  disk?: 'unreadable' | 'outside link',
])[] = [
  ['not allowed', 'SRC002', (file) => ({ file, to: EXAMPLE_SHOP[file] ?? '' }), 'unreadable'],
  ['a link to elsewhere', 'SRC012', (file) => ({ file, to: EXAMPLE_SHOP[file] ?? '' }), 'outside link'],
  ['three megabytes', 'SRC003', (file) => ({ file, to: new Uint8Array(3 * 1024 * 1024).fill(0x20) })],
  ['a zero byte', 'SRC004', (file) => ({ file, to: Uint8Array.of(...bytes(file), 0) })],
  ['UTF-16', 'SRC005', (file) => ({ file, to: utf16(EXAMPLE_SHOP[file] ?? '') })],
  ['a stray byte', 'SRC005', (file) => ({ file, to: Uint8Array.of(...bytes(file), 0xe4) })],
  ['nothing', 'SRC010', (file) => ({ file, to: '' })],
  ['an open quote', 'SRC006', (file) => ({ file, to: `x: "\n${EXAMPLE_SHOP[file] ?? ''}` })],
];

describe.each(WAYS.map(([title, code, edit, disk]) => ({ title, code, edit, disk })))(
  '$title',
  ({ code, edit, disk }) => {
    test.each(FILES)('%s is one fault', (file) => {
      const { diagnostics } = runExample([edit(file)], disk === undefined ? {} : { [file]: disk });
      expect(diagnostics.map((d) => `${d.code} ${d.range.file} ${d.message}`)).toEqual([
        expect.stringMatching(new RegExp(`^${code} shop/${file} `)),
      ]);
      for (const d of diagnostics) expect(d.hint).toBeTruthy();
    });
  },
);

describe('on the disk', () => {
  function folder(): string {
    const dir = mkdtempSync(path.join(tmpdir(), 'src-'));
    onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
    for (const [name, text] of Object.entries(EXAMPLE_SHOP)) {
      mkdirSync(path.dirname(path.join(dir, name)), { recursive: true });
      writeFileSync(path.join(dir, name), text);
    }
    return dir;
  }
  const rows = (dir: string) =>
    compileShop({ folder: dir, shown: 'shop' }).diagnostics.map((d) => `${d.code} ${d.range.file}`);

  test('the same shop is sound', () => {
    expect(rows(folder())).toEqual([]);
  });

  test('links to nothing, to themselves and to elsewhere', () => {
    const dir = folder();
    for (const [name, target] of [
      ['tools.yaml', path.join(dir, 'gone.yaml')],
      ['stages/isolate.yaml', path.join(dir, 'stages/isolate.yaml')],
      ['machines/pump.yaml', '/etc/hostname'],
    ] as const) {
      unlinkSync(path.join(dir, name));
      symlinkSync(target, path.join(dir, name));
    }
    expect(rows(dir)).toEqual([
      'SRC012 shop/machines/pump.yaml',
      'SRC002 shop/stages/isolate.yaml',
      'SRC002 shop/tools.yaml',
    ]);
  });

  test('a folder under the name of a register', () => {
    const dir = folder();
    unlinkSync(path.join(dir, 'people.yaml'));
    mkdirSync(path.join(dir, 'people.yaml'));
    expect(rows(dir)).toContain('SRC001 shop/people.yaml');
  });
});
