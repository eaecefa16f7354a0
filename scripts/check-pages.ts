/** Type-checks the pages of the site, with Astro's usage reports switched off. */

import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { PROGRAM_FOLDER } from './lib/options.ts';

const checker = path.join(PROGRAM_FOLDER, 'node_modules', '@astrojs', 'check', 'bin', 'astro-check.js');
const { status } = spawnSync(
  process.execPath,
  [
    checker,
    '--root',
    PROGRAM_FOLDER,
    '--tsconfig',
    path.join(PROGRAM_FOLDER, 'src', 'site', 'tsconfig.json'),
    '--minimumSeverity',
    'warning',
  ],
  {
    cwd: PROGRAM_FOLDER,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
    stdio: 'inherit',
  },
);
process.exitCode = status ?? 2;
