/** A small shop under control, in a folder: two benches, two procedures, three people; its commands run on a chosen day. */

import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { MINI_SHOP } from '../fixtures/mini-shop.ts';
import { type Ended, run, temporaryFolder } from './run.ts';

const CLOCK = pathToFileURL(path.join(import.meta.dirname, 'control-clock.ts')).href;
const PROCEDURE = MINI_SHOP['procedures/mw-1.yaml'] ?? '';

const FILES: Readonly<Record<string, string>> = {
  ...MINI_SHOP,
  'people.yaml': `${MINI_SHOP['people.yaml'] ?? ''}cal: { name: Cal Reed, role: Editor, approves: [minor] }\n`,
  'benches.yaml': `pumps: { name: Pumps, place: Hall 1, lead: ada, copy: 1, binder: [MW-1, MW-2] }
spares: { name: Spares, place: Hall 2, copy: 2, binder: [MW-1] }
`,
  'procedures/mw-2.yaml': PROCEDURE.replace('doc: MW-1', 'doc: MW-2').replace(
    'title: Renew the cover gasket',
    'title: Renew the cover gasket at sea',
  ),
};

export interface ControlShop {
  readonly folder: string;
  /** Runs a command in it on a day. */
  readonly run: (script: string, day: string, ...args: readonly string[]) => Promise<Ended>;
  /** Its `issued/ledger.jsonl`; empty before the first line. */
  readonly ledger: () => string;
  readonly edit: (file: string, change: (text: string) => string) => void;
  /** Adds a change record to MW-1. */
  readonly revise: (rev: string, effective: string, more?: Partial<ChangeRecord>) => void;
}

interface ChangeRecord {
  readonly approved: string;
  readonly author: string;
  readonly approver: string;
  readonly class: string;
  readonly affects: string;
}

/** Writes it into the folder. more: further files, or others in their place. */
export function controlShop(folder: string, more: Readonly<Record<string, string>> = {}): ControlShop {
  for (const [name, text] of Object.entries({ ...FILES, ...more })) {
    mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
    writeFileSync(path.join(folder, name), text);
  }
  return opened(folder);
}

/** The same shop as it stands now, in a folder that is removed after the test. */
export function copyOf({ folder }: ControlShop): ControlShop {
  const copy = path.join(temporaryFolder(), 'shop');
  cpSync(folder, copy, { recursive: true });
  return opened(copy);
}

function opened(folder: string): ControlShop {
  const edit: ControlShop['edit'] = (file, change) => {
    const full = path.join(folder, file);
    const text = readFileSync(full, 'utf8');
    const next = change(text);
    if (next === text) throw new Error(`the change of ${file} changes nothing`);
    writeFileSync(full, next);
  };
  return {
    folder,
    edit,
    run: (script, day, ...args) => runOn(day, script, ['--shop', folder, ...args]),
    ledger: () => {
      try {
        return readFileSync(path.join(folder, 'issued', 'ledger.jsonl'), 'utf8');
      } catch {
        return '';
      }
    },
    revise: (rev, effective, more) => {
      const given = { approved: '2026-03-02', author: 'ada', approver: 'ben', class: 'major', ...more };
      const said = Object.entries({ rev, effective, ...given, what: 'Torque raised', why: 'Joint came loose' });
      const line = `  - { ${said.map(([k, v]) => `${k}: ${v}`).join(', ')} }`;
      edit('procedures/mw-1.yaml', (t) => t.replace('\nstages:', `\n${line}\nstages:`));
    },
  };
}

/** A command on a day of its own, whatever the clock says. */
export function runOn(day: string, script: string, args: readonly string[]): Promise<Ended> {
  return run(script, args, { env: { NODE_OPTIONS: `--import=${CLOCK}`, FETTLEBOOK_TEST_DAY: day } });
}

/** Raises the torque of the cover joint: for `edit('machines/pump.yaml', …)`. */
export const RAISED = (text: string): string => text.replace('torque: 160 N·m', 'torque: 165 N·m');
