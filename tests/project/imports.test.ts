/** Holds the import direction of DEVELOPERS.md: the folders of src may import only what the table allows. */

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

const SRC = path.resolve(import.meta.dirname, '..', '..', 'src');

const PURE = ['units', 'diagnostics'];
const ENGINE = [...PURE, 'fasteners', 'torque', 'geometry'];
const RESOLVED = [...ENGINE, 'source', 'model', 'resolve'];

/** Folder to the folders that it may import (itself is always allowed). */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  units: [],
  diagnostics: [],
  source: ['units', 'diagnostics'],
  model: ['units', 'diagnostics', 'source'],
  fasteners: ['units'],
  torque: ['units', 'fasteners'],
  geometry: ['units'],
  resolve: [...ENGINE, 'source', 'model'],
  lists: ['units', 'resolve'],
  control: [...RESOLVED, 'lists'],
  layout: [...RESOLVED, 'control'],
  rules: [...RESOLVED, 'control', 'layout'],
  pipeline: [...RESOLVED, 'control', 'lists', 'layout', 'rules'],
  'render/svg': [...RESOLVED, 'layout'],
  'render/pdf': [...RESOLVED, 'control', 'layout', 'render/qr'],
  'render/qr': [...RESOLVED, 'layout', 'render/svg'],
  'render/html': [...RESOLVED, 'control', 'layout', 'render/svg'],
  'render/search': [...RESOLVED, 'render/html'],
  site: [
    ...RESOLVED,
    'control',
    'lists',
    'layout',
    'rules',
    'pipeline',
    'render/svg',
    'render/qr',
    'render/html',
    'render/search',
  ],
};

/** Only these read files; `resolve` hashes, and hashing is no reading. */
const MAY_READ_FILES = ['source', 'control', 'site'];

function folderOf(file: string): string {
  const [first = '', second = ''] = path.relative(SRC, file).split(path.sep);
  return first === 'render' ? `render/${second}` : first;
}

function sources(): { file: string; imports: string[] }[] {
  return readdirSync(SRC, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile() && /\.(ts|astro)$/.test(e.name))
    .map((e) => {
      const file = path.join(e.parentPath, e.name);
      const text = readFileSync(file, 'utf8');
      const imports = [...text.matchAll(/(?:from|import)\s*\(?\s*'([^']+)'/g)].map((m) => m[1] ?? '');
      return { file, imports };
    });
}

describe('imports run one way', () => {
  const all = sources();

  test('every folder of src stands in the table', () => {
    const folders = new Set(all.map((s) => folderOf(s.file)));
    expect([...folders].filter((f) => MAY_IMPORT[f] === undefined)).toEqual([]);
    expect(folders.size).toBeGreaterThan(10);
  });

  test('no folder imports one that it may not', () => {
    const wrong = all.flatMap(({ file, imports }) => {
      const from = folderOf(file);
      return imports
        .filter((i) => i.startsWith('.'))
        .map((i) => folderOf(path.resolve(path.dirname(file), i)))
        .filter((to) => to !== from && !(MAY_IMPORT[from] ?? []).includes(to))
        .map((to) => `${path.relative(SRC, file)} imports ${to}`);
    });
    expect(wrong).toEqual([]);
  });

  test('files are read in source, and by the site where Astro is run', () => {
    const wrong = all
      .filter(
        ({ file, imports }) => imports.some((i) => /^node:fs/.test(i)) && !MAY_READ_FILES.includes(folderOf(file)),
      )
      .map(({ file }) => path.relative(SRC, file));
    expect(wrong).toEqual([]);
  });

  test('the table has no circle', () => {
    const visit = (folder: string, on: readonly string[]): void => {
      expect(on, `circle through ${folder}`).not.toContain(folder);
      for (const next of MAY_IMPORT[folder] ?? []) visit(next, [...on, folder]);
    };
    for (const folder of Object.keys(MAY_IMPORT)) visit(folder, []);
  });
});
