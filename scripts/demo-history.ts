/** `npm run demo-history`: writes the demo's ledger afresh, from the content of today and what it said in earlier days. */

import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { newKeyPair, privateKey } from '../src/control/index.ts';
import { hasErrors, renderFull } from '../src/diagnostics/index.ts';
import { compileShop } from '../src/pipeline/index.ts';
import { DAYS } from './demo/acts.ts';
import { CONTENT, contentOn } from './demo/content-on.ts';
import { perform } from './demo/perform.ts';
import { runCommand, UsageFault } from './lib/faults.ts';
import { readOptions } from './lib/options.ts';

const APPROVERS = ['quality-lead', 'shop-lead', 'chief-engineer'];

await runCommand(() => {
  readOptions(
    'demo-history',
    'Writes the ledger of the demo afresh. A real shop never does: what is issued stays.',
    {},
  );
  const folder = mkdtempSync(path.join(tmpdir(), 'fettlebook-demo-'));
  try {
    // The pairs are made for this one history; their private halves are kept nowhere.
    const keys = new Map(APPROVERS.map((id) => [id, newKeyPair()]));
    for (const day of DAYS) {
      contentOn(day.on, folder);
      mkdirSync(path.join(folder, 'keys'), { recursive: true });
      for (const [id, pair] of keys) writeFileSync(path.join(folder, 'keys', `${id}.pem`), pair.publicPem);
      const compiled = compileShop({ folder, shown: 'content', cards: 'suspect' });
      if (hasErrors(compiled.diagnostics)) {
        throw new UsageFault(
          `the content of ${day.on} has errors`,
          renderFull(compiled.diagnostics, compiled.textOf).slice(0, 2000),
        );
      }
      const sign = (id: string) => privateKey(keys.get(id)?.privatePem ?? '');
      for (const act of day.acts) perform(compiled, act, { folder, shown: 'content', today: day.on }, sign);
    }
    for (const name of ['issued', 'keys']) {
      rmSync(path.join(CONTENT, name), { recursive: true, force: true });
      cpSync(path.join(folder, name), path.join(CONTENT, name), { recursive: true });
    }
    return 0;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
