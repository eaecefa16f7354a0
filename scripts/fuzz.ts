/** `npm run fuzz`: the nightly form of the random edits: 20,000 of the demo's files, and 4,000 of a shop with every field. */

import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { runCommand } from './lib/faults.ts';
import { PROGRAM_FOLDER, readOptions } from './lib/options.ts';

await runCommand(() => {
  const options = readOptions('fuzz', 'Edits the demo at random and checks that every edit gives diagnostics.', {
    edits: { type: 'string', help: 'number of edits; default 20000' },
    seed: { type: 'string', help: 'seed to repeat a run; default: another one each time, printed when it fails' },
  });
  const vitest = path.join(PROGRAM_FOLDER, 'node_modules', 'vitest', 'vitest.mjs');
  const args = [vitest, 'run', '--config', 'tests/vitest.config.ts', 'tests/fuzz', 'tests/pipeline/edits'];
  const edits = String(options['edits'] ?? 20_000);
  const { status } = spawnSync(process.execPath, args, {
    cwd: PROGRAM_FOLDER,
    stdio: 'inherit',
    env: {
      ...process.env,
      FETTLEBOOK_FUZZ: edits,
      FETTLEBOOK_EDITS: String(Math.ceil(Number(edits) / 5)),
      FETTLEBOOK_SEED: String(options['seed'] ?? 'random'),
    },
  });
  return status ?? 2;
});
