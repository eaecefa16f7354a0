/** `npm run kill-issue`: kills the `issue` command many times over and looks whether the ledger has held. The suite does a share. */

import { seeded } from './bench/random.ts';
import { runCommand, UsageFault } from './lib/faults.ts';
import { killIssue } from './lib/kill-issue.ts';
import { readOptions } from './lib/options.ts';

await runCommand(async () => {
  const options = readOptions(
    'kill-issue',
    'Kills `issue` at random moments in a shop of its own, and looks each time whether the ledger holds, nothing is half issued, and the next issue works.',
    {
      kills: { type: 'string', help: 'how many; default: 100' },
      seed: { type: 'string', help: 'a number that chooses the moments; default: another one each time' },
    },
  );
  const kills = whole(options['kills'], 100, 'kills');
  const seed = whole(options['seed'], Math.floor(Math.random() * 2 ** 31), 'seed');
  process.stderr.write(`seed ${seed}\n`);
  let count = 0;
  const found = await killIssue(kills, seeded(seed), (words) => {
    count += 1;
    process.stderr.write(`kill ${count} of ${kills}: ${words}\n`);
  });
  process.stdout.write(
    `${kills} kills: ${found.before} before the ledger was touched, ${found.within} while it was being written, ${found.after} after; it held every time\n`,
  );
  return 0;
});

function whole(given: string | boolean | undefined, usual: number, name: string): number {
  if (given === undefined) return usual;
  const value = Number(given);
  if (Number.isInteger(value) && value > 0) return value;
  throw new UsageFault(
    `\`--${name} ${String(given)}\` is no whole number above nought`,
    `for example \`--${name} 20\``,
  );
}
