/** For which day is published, and that no older state of the ledger takes the place of a newer one. */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { isDay, type Ledger } from '../../src/control/index.ts';
import { UsageFault } from './faults.ts';
import { MANIFEST } from './staging.ts';
import { today } from './today.ts';

/** given: `--as-of`. The clock is not believed when it is behind the ledger. */
export function publishingDay(given: string | boolean | undefined, ledger: Ledger): string {
  if (typeof given === 'string') {
    if (isDay(given)) return given;
    throw new UsageFault(`\`${given}\` is not a day`, 'write it like `--as-of 2026-12-01`');
  }
  const day = today();
  const last = ledger.entries.at(-1)?.recorded ?? day;
  if (day >= last) return day;
  throw new UsageFault(
    `the clock of this machine says ${day}, and the last line of the ledger was written on ${last}`,
    'set the clock, or name the day with `--as-of`',
  );
}

/** What stands in the output folder was made from a ledger that the present one must continue. */
export function refuseRollBack(out: string, ledger: Ledger, asOf: string, chosen: boolean): void {
  const before = publishedBefore(out);
  if (before === undefined) return;
  const { entries, head } = before.ledger;
  const known = entries === 0 ? undefined : ledger.entries[entries - 1];
  if (entries > 0 && known?.seal !== head) {
    throw new UsageFault(
      ledger.entries.length < entries
        ? `\`${out}\` was published from a ledger of ${entries} lines, and this one has ${ledger.entries.length}: cards that were superseded or stopped would be current again`
        : `\`${out}\` was published from another ledger: line ${entries} of it is not the one of this shop's folder`,
      'bring the shop folder up to date; for another shop choose another folder with `--out DIR`',
    );
  }
  if (!chosen && before.asOf > asOf) {
    throw new UsageFault(
      `\`${out}\` was published for ${before.asOf}, and the clock of this machine says ${asOf}`,
      'set the clock, or name the day with `--as-of`',
    );
  }
}

interface PublishedBefore {
  readonly asOf: string;
  readonly ledger: { readonly entries: number; readonly head: string };
}

/** Undefined when nothing was published there, or by a version that knew no ledger. */
function publishedBefore(out: string): PublishedBefore | undefined {
  try {
    const read = JSON.parse(readFileSync(path.join(out, MANIFEST), 'utf8')) as Partial<PublishedBefore>;
    const { asOf, ledger } = read;
    return typeof asOf === 'string' && typeof ledger?.entries === 'number' && typeof ledger.head === 'string'
      ? { asOf, ledger }
      : undefined;
  } catch {
    return undefined;
  }
}
