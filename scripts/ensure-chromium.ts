/** Makes sure that the browser tests have a browser: Debian's Chromium, installed when this is root and it is missing. */

import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { CHROMIUM_PATH } from './lib/chromium.ts';
import { runCommand, UsageFault } from './lib/faults.ts';

await runCommand(() => {
  if (existsSync(CHROMIUM_PATH)) return 0;
  const byHand = new UsageFault(
    `the browser tests need Chromium, and ${CHROMIUM_PATH} is not there`,
    'install it with `apt-get install chromium`, or set CHROMIUM_PATH',
  );
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) throw byHand;
  process.stderr.write('installing Chromium from Debian for the browser tests\n');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [
    ['update', '-qq'],
    ['install', '-y', '-qq', '--no-install-recommends', 'chromium'],
  ]) {
    const { status, stderr } = spawnSync('apt-get', args, {
      env,
      encoding: 'utf8',
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    if (status !== 0)
      throw new UsageFault(`apt-get ${args[0]} failed: ${stderr.trim().split('\n').at(-1) ?? ''}`, byHand.hint);
  }
  if (!existsSync(CHROMIUM_PATH)) throw byHand;
  return 0;
});
