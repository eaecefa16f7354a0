/** For which day is published, and that no older state of the ledger takes the place of a newer one. */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { isDay, isPrefix, type Ledger } from '../../src/control/index.ts';
import { UsageFault } from './faults.ts';
import { MANIFEST } from './staging.ts';
import { today } from './today.ts';

/**
 * given: `--as-of`. A clock that is behind the ledger is not believed: what was superseded or stopped by its last line would be
 * current again. The day of that line is taken, and `warn` is told.
 */
export function publishingDay(
  given: string | boolean | undefined,
  ledger: Ledger,
  warn: (text: string) => void,
  clock = today(),
): string {
  if (typeof given === 'string') {
    if (isDay(given)) return given;
    throw new UsageFault(`\`${given}\` is not a day`, 'write it like `--as-of 2026-12-01`');
  }
  const last = ledger.entries.at(-1)?.recorded ?? clock;
  if (clock >= last) return clock;
  warn(
    `the clock of this machine says ${clock}, and the last line of the ledger was written on ${last}: published as of ${last}; set the clock`,
  );
  return last;
}

/** What stands in the output folder was made from a ledger that the present one must continue. */
export function refuseRollBack(out: string, ledger: Ledger): void {
  const before = publishedBefore(out);
  if (before === undefined || isPrefix(before, ledger)) return;
  throw new UsageFault(
    ledger.entries.length < before.entries
      ? `\`${out}\` was published from a ledger of ${before.entries} lines, and this one has ${ledger.entries.length}: cards that were superseded or stopped would be current again`
      : `\`${out}\` was published from another ledger: line ${before.entries} of it is not the one of this shop's folder`,
    'bring the shop folder up to date; for another shop choose another folder with `--out DIR`',
  );
}

/** Undefined when nothing was published there, or by a version that knew no ledger. */
function publishedBefore(out: string): { readonly entries: number; readonly head: string } | undefined {
  try {
    const { ledger } = JSON.parse(readFileSync(path.join(out, MANIFEST), 'utf8')) as {
      readonly ledger?: { readonly entries?: unknown; readonly head?: unknown };
    };
    return typeof ledger?.entries === 'number' && typeof ledger.head === 'string'
      ? { entries: ledger.entries, head: ledger.head }
      : undefined;
  } catch {
    return undefined;
  }
}
