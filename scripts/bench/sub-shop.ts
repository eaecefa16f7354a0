/** One procedure with everything that it stands on, cut out of a shop: what slips and random edits are tried on. */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { diskFiles, memoryFiles } from '../../src/control/index.ts';
import { collector } from '../../src/diagnostics/index.ts';
import { type Compiled, compileFiles } from '../../src/pipeline/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { readFiles, readMemory } from '../../src/source/index.ts';

/** Files by their path within the shop folder. */
export type ShopFiles = Readonly<Record<string, string>>;

export const DEMO_FOLDER = path.resolve(import.meta.dirname, '..', '..', 'content');

export function demoFiles(): ShopFiles {
  const { report } = collector(CATALOGUE);
  return Object.fromEntries(
    readFiles(DEMO_FOLDER, 'content', report).map((f) => [
      f.relative,
      readFileSync(path.join(DEMO_FOLDER, f.relative), 'utf8'),
    ]),
  );
}

/** Ledger, snapshots and keys of the demo shop, by their path within it. */
export function demoIssued(): ShopFiles {
  const { list, read } = diskFiles(DEMO_FOLDER);
  return Object.fromEntries(list().map((name) => [name, new TextDecoder().decode(read(name))]));
}

/** Procedure files of a shop, sorted. */
export function procedureFiles(files: ShopFiles): readonly string[] {
  return Object.keys(files)
    .filter((f) => f.startsWith('procedures/'))
    .sort();
}

/**
 * The registers, the shared stages, the procedure and its machine. Binders, wanted torque tables and what names other
 * procedures shrink to what is left, so that only what concerns the procedure is computed.
 */
export function subShop(files: ShopFiles, procedure: string): ShopFiles {
  const text = files[procedure] ?? '';
  const doc = /^doc: (\S+)/m.exec(text)?.[1] ?? '';
  const machine = /^machine: (\S+)/m.exec(text)?.[1] ?? '';
  const kept = Object.entries(files)
    .filter(
      ([name]) =>
        !/^(procedures|machines|tables)\//.test(name) || name === procedure || name === `machines/${machine}.yaml`,
    )
    .map(([name, content]): [string, string] => [
      name,
      /^(temporary|feedback)\.yaml$/.test(name) ? entriesOn(content, doc) : content,
    ])
    // A register that may be left out is, when nothing of it is left.
    .filter(([name, content]) => content !== '' || !/^(temporary|feedback)\.yaml$/.test(name));
  return Object.fromEntries(
    kept.map(([name, content]) => {
      if (name === 'benches.yaml') return [name, content.replace(/binder: \[[^\]]*\]/g, `binder: [${doc}]`)];
      if (name === procedure) return [name, content.replace(/^ +affects: \[[^\]]*\]\n/gm, '')];
      if (name === 'outside.yaml') return [name, withoutConfirmations(content, doc)];
      if (name === 'shop.yaml') return [name, content.replace(/^tables:\n(?: {2}.*\n)+/m, '')];
      return [name, content];
    }),
  );
}

/** Entries of a register that concern the document. */
function entriesOn(content: string, doc: string): string {
  return content
    .split(/^(?=\S)/m)
    .filter((entry) => new RegExp(`^ +doc: ${doc}$`, 'm').test(entry))
    .join('');
}

/** The register of outside documents without the confirmations of other procedures. */
function withoutConfirmations(content: string, doc: string): string {
  return content
    .replace(/^ {4}([A-Z0-9-]+):.*\n(?: {6}.*\n)*/gm, (entry, of) => (of === doc ? entry : ''))
    .replace(/^ {2}confirmed:\n(?! {4})/gm, '');
}

/** Compiles from memory; the folder is called `content` in diagnostics. */
export function compileMemory(files: ShopFiles): Compiled {
  const ofControl = ([name]: readonly [string, string]): boolean => /^(issued|keys)\//.test(name);
  const issued = memoryFiles(new Map(Object.entries(files).filter(ofControl)));
  const list = Object.entries(files)
    .filter((file) => !ofControl(file))
    .map(([relative, content]) => ({ relative, content }))
    .sort((a, b) => (a.relative < b.relative ? -1 : 1));
  return compileFiles((report) => readMemory(list, {}, 'content', report), 'content', {
    cards: 'suspect',
    issued,
  });
}
