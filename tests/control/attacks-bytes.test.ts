/** Attacks on the issued revisions byte by byte: no flipped bit passes, and no other spelling of a line. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HEAD, LEDGER } from '../../src/control/files.ts';
import { compileFiles } from '../../src/pipeline/index.ts';
import { readMemory } from '../../src/source/index.ts';
import { MINI_SHOP } from '../fixtures/mini-shop.ts';
import { check, type Files, forged, history, ledgerText, withLedger } from './history.ts';

const { entries, files } = history();

function flipped(of: Files, name: string, at: number, bit: number): Files {
  const bytes = Buffer.from(of.get(name) ?? '');
  bytes[at] = (bytes[at] ?? 0) ^ (1 << bit);
  return new Map(of).set(name, new Uint8Array(bytes));
}

const size = (name: string): number => Buffer.from(files.get(name) ?? '').length;

test('the history is sound', () => {
  const { said, read } = check(files);
  expect(said).toEqual([]);
  expect(read.sound).toBe(true);
  expect(read.ledger.entries).toEqual(entries);
});

describe('a flipped bit', () => {
  const names = [...files.keys()];

  test('in any file is told, with the name of the file or the line', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.nat(7),
        (name, part, bit) => {
          const at = Math.min(size(name) - 1, Math.floor(part * size(name)));
          const { found, read } = check(flipped(files, name, at, bit));
          expect(read.sound).toBe(false);
          expect(found.some((d) => d.range.file === `shop/${name}` || d.message.includes(`\`${name}\``))).toBe(true);
        },
      ),
      { numRuns: 400 },
    );
  });

  test('in the ledger is told at its line or the one after it', () => {
    const text = Buffer.from(files.get(LEDGER) ?? '');
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.nat(7), (at, bit) => {
        const { said, found } = check(flipped(files, LEDGER, at, bit));
        expect(found.every((d) => d.severity === 'error')).toBe(true);
        const line = text.subarray(0, at).filter((b) => b === 10).length + 1;
        // Of bytes that are no letters, no line can be told.
        const lines = said.map((s) => Number(/jsonl:(\d+) /.exec(s)?.[1]));
        expect(said[0]?.includes('UTF-8') === true || lines.some((l) => Math.abs(l - line) <= 1)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  test.each([HEAD, 'keys/ben.pem', 'keys/cleo.pem'])('at every place of %s', (name) => {
    const passed: string[] = [];
    for (let at = 0; at < size(name); at++) {
      for (let bit = 0; bit < 8; bit++) {
        const { found } = check(flipped(files, name, at, bit));
        if (!found.some((d) => d.range.file === `shop/${name}` || d.message.includes(`\`${name}\``))) {
          passed.push(`${at}.${bit}`);
        }
      }
    }
    expect(passed).toEqual([]);
  });

  test('at every place of a signature', () => {
    const text = String(files.get(LEDGER));
    const start = text.indexOf('"value":"') + '"value":"'.length;
    for (let at = start; at < start + 88; at++) {
      for (let bit = 0; bit < 8; bit++) {
        expect(check(flipped(files, LEDGER, at, bit)).found.length).toBeGreaterThan(0);
      }
    }
  });

  test('stops the build', () => {
    const content = Object.entries(MINI_SHOP).map(([relative, text]) => ({ relative, content: text }));
    const compile = (issued: Files) =>
      compileFiles((report) => readMemory(content, {}, 'shop', report), 'shop', {
        cards: 'suspect',
        issued: { list: () => [...issued.keys()].sort(), read: (name) => bytesOf(issued.get(name)) },
      });
    const other = compile(withLedger(new Map([...files].filter(([n]) => n.startsWith('keys/'))), []));
    expect(other.checked).toBeDefined();
    for (const name of ['issued/MW-1/A.json', LEDGER, 'keys/ben.pem']) {
      expect(compile(flipped(files, name, 40, 1)).checked, name).toBeUndefined();
    }
  });
});

function bytesOf(content: string | Uint8Array | undefined): Uint8Array | undefined {
  return typeof content === 'string' ? Buffer.from(content) : content;
}

describe('spelling', () => {
  const line = (seq: number): string => ledgerText(entries.slice(seq - 1, seq));
  test.each([
    ['a blank', (l: string) => l.replace('":', '" :')],
    ['keys in another order', (l: string) => `${JSON.stringify({ seq: 5, ...JSON.parse(l) })}\n`],
    ['an escape', (l: string) => l.replace('Sound', '\\u0053ound')],
    ['a key twice', (l: string) => l.replace('{"by":"ada"', '{"by":"ben","by":"ada"')],
    ['a number as 5.0', (l: string) => l.replace('"seq":5', '"seq":5.0')],
    ['half a surrogate pair', (l: string) => l.replace('Sound', 'Sound\\ud800')],
    ['a carriage return', (l: string) => l.replace('\n', '\r\n')],
  ])('%s is another line', (_, change) => {
    const changed = change(line(5));
    expect(changed).not.toBe(line(5));
    const text = ledgerText(entries).replace(line(5), changed);
    expect(check(new Map(files).set(LEDGER, text)).said[0]).toMatch(/^LDG00[12] issued\/ledger.jsonl:5 /);
  });

  test('a key of its own that no command writes', () => {
    const more = forged(entries, 5, () => ({ note: 'x' }));
    expect(check(withLedger(files, more)).said[0]).toMatch(/^LDG001 issued\/ledger.jsonl:5 .*note/i);
  });
});
