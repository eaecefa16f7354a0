/** What the worksheet's script carries into the browser. */

import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { describe, expect, test } from 'vitest';

const ROOT = path.resolve(import.meta.dirname, '..', '..');

/** A page is opened over a workshop's network: a measured size and a little room. */
const MOST_KB = 70;

describe('the script of the worksheet', () => {
  test('carries the engine and one small package, nothing of Node, no parser of content, and stays lean', async () => {
    const built = await build({
      root: ROOT,
      configFile: false,
      logLevel: 'silent',
      build: { write: false, rolldownOptions: { input: path.join(ROOT, 'src/site/client/worksheet/main.ts') } },
    });
    if (!('output' in built)) throw new Error('nothing was bundled');
    const chunks = built.output.filter((o) => o.type === 'chunk');
    const modules = chunks.flatMap((c) => c.moduleIds).map((id) => path.relative(ROOT, id));
    const packages = modules.filter((id) => id.includes('node_modules')).map((id) => id.split('node_modules/')[1]);
    expect([...new Set(packages.map((id) => id?.split('/')[0]))]).toEqual(['fastest-levenshtein']);
    expect(chunks.flatMap((c) => [...c.imports, ...c.dynamicImports]).filter((i) => i.startsWith('node:'))).toEqual([]);
    const folders = new Set(modules.filter((id) => id.startsWith('src/')).map((id) => id.split('/')[1]));
    expect([...folders].sort()).toEqual(['fasteners', 'geometry', 'layout', 'render', 'site', 'torque', 'units']);
    const kb = chunks.reduce((sum, c) => sum + gzipSync(c.code).length, 0) / 1000;
    expect(kb).toBeGreaterThan(20);
    expect(kb).toBeLessThan(MOST_KB);
  });
});
