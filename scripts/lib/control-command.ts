/** What the commands of control share: the shop opened with its ledger, the approver's key, the closing words. */

import type { KeyObject } from 'node:crypto';
import { existsSync, readFileSync, realpathSync } from 'node:fs';
import path from 'node:path';
import {
  ControlFault,
  diskFiles,
  type Entry,
  LEDGER,
  type Ledger,
  privateKey,
  verifyLedger,
} from '../../src/control/index.ts';
import { collector, hasErrors, printable, renderFull } from '../../src/diagnostics/index.ts';
import { type Compiled, type ControlOptions, compileShop } from '../../src/pipeline/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { UsageFault } from './faults.ts';
import { type OptionSpec, type OptionValues, said, shopFolder, typedPath } from './options.ts';
import { faultCount } from './summary.ts';
import { today } from './today.ts';

export const SHOP_OPTION = {
  shop: { type: 'string', help: 'the shop folder (or FETTLEBOOK_SHOP); default: content' },
} as const satisfies Readonly<Record<string, OptionSpec>>;

export const KEY_OPTION = {
  key: { type: 'string', help: 'file with the approver’s private key (Ed25519, PEM): the act is signed with it' },
} as const satisfies Readonly<Record<string, OptionSpec>>;

export interface Opened {
  readonly compiled: Compiled;
  readonly control: ControlOptions;
}

/** Compiles the shop as `check` does, and reads the key when one is given. */
export function openShop(values: OptionValues): Opened {
  const shop = shopFolder(values);
  if (!['shop.yaml', 'shop.yml', LEDGER].some((name) => existsSync(path.join(shop.folder, name)))) {
    // An act would otherwise begin a ledger wherever a slip of the hand points.
    throw new UsageFault(`\`${shop.shown}\` is not a shop’s folder`, 'give the shop folder with `--shop DIR`');
  }
  const key = keyOf(values, shop.folder);
  const compiled = compileShop({ ...shop, cards: 'suspect' });
  return { compiled, control: { ...shop, today: today(), ...(key === undefined ? {} : { key }) } };
}

function keyOf(values: OptionValues, shop: string): KeyObject | undefined {
  const given = said(values['key']);
  if (given === '') return undefined;
  const file = typedPath(given);
  const pem = readKeyFile(file, given);
  if (isInside(file, shop)) {
    throw new UsageFault(
      `the private key \`${given}\` lies in the shop’s folder, which others can read`,
      'take it out of there, make a new pair with `npm run new-key`, and use that one',
    );
  }
  const key = privateKey(pem);
  if (key === undefined) {
    throw new UsageFault(
      `\`${given}\` holds no private Ed25519 key`,
      'give the file that `npm run new-key` has written; a key with a password is not read',
    );
  }
  return key;
}

function readKeyFile(file: string, given: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    throw new UsageFault(`the key file \`${given}\` is not there or cannot be read`, 'name the file with `--key FILE`');
  }
}

/** Links resolved, so that none leads in unseen. `file` need not be there; its folder must. */
export function isInside(file: string, folder: string): boolean {
  const real = (name: string): string => {
    try {
      return realpathSync(name);
    } catch {
      return path.resolve(name);
    }
  };
  const outer = real(folder);
  return [real(file), path.join(real(path.dirname(file)), path.basename(file))].some(
    (name) => name === outer || name.startsWith(outer + path.sep),
  );
}

/** Prints what stands against the content; true when it holds an error. closing: what follows from that. */
export function tellFaults({ diagnostics, textOf }: Compiled, closing: string): boolean {
  if (diagnostics.length > 0) process.stderr.write(`${renderFull(diagnostics, textOf)}\n`);
  if (!hasErrors(diagnostics)) return false;
  process.stderr.write(`${faultCount(diagnostics)}: ${closing}\n`);
  return true;
}

/** One line about errors that do not stand in the way of the act, and in the way of the next build. */
export function tellLater({ diagnostics }: Compiled): void {
  if (!hasErrors(diagnostics)) return;
  process.stderr.write(
    `${faultCount(diagnostics)} in the content: this is recorded all the same, but nothing is published until they are mended (\`npm run check\` shows them)\n`,
  );
}

/** The ledger as it stands on the disk now. Throws ControlFault when it does not hold. */
export function ledgerNow({ folder, shown }: ControlOptions, { info }: Compiled['resolved']): Ledger {
  const { report, list } = collector(CATALOGUE);
  const { ledger } = verifyLedger(diskFiles(folder), shown, info.control, report);
  const [first] = list().filter((d) => d.severity === 'error');
  if (first !== undefined) throw new ControlFault(`the ledger does not hold: ${first.message}`, 'run `npm run check`');
  return ledger;
}

/** The line that an act has written. */
export function written(entries: readonly Entry[]): Entry {
  const [entry] = entries;
  if (entry === undefined) throw new RangeError('the act wrote no line');
  return entry;
}

/** To standard output, safe for a terminal. */
export function say(lines: readonly string[]): void {
  process.stdout.write(lines.map((l) => `${printable(l)}\n`).join(''));
}
