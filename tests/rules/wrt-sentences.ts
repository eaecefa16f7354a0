/** Puts one sentence into the example shop and reads what the checks of writing say of it. */

import type { Diagnostic } from '../../src/diagnostics/index.ts';
import { runExample } from '../../src/pipeline/index.ts';
import type { Edit } from '../../src/rules/index.ts';

export type Field = 'do' | 'note' | 'avoid' | 'if out' | 'hazard';

const FILE = 'procedures/mw-1.yaml';
const PLACES: Readonly<Record<Field, readonly [from: string, to: (text: string) => string]>> = {
  do: ['      - do: Wipe both faces with a <consumable:wipe>.\n', (t) => `      - do: ${t}\n        use: [wipe]\n`],
  note: ['        fit: [gasket, cover]\n', (t) => `        fit: [gasket, cover]\n        note: ${t}\n`],
  avoid: ['          avoid: Open the vent first.\n', (t) => `          avoid: ${t}\n`],
  'if out': ['          if out: Loosen and repeat this stage.\n', (t) => `          if out: ${t}\n`],
  hazard: ['          hazard: Trapped water scalds the hands.\n', (t) => `          hazard: ${t}\n`],
};

/** Everything of the family WRT that is said of the shop with this text; `edits` change the shop further. */
export function findingsOf(field: Field, text: string, edits: readonly Edit[] = []) {
  const [from, to] = PLACES[field];
  const run = runExample([{ file: FILE, from, to: to(JSON.stringify(text)) }, ...edits]);
  const found = run.diagnostics.filter((d) => d.code.startsWith('WRT'));
  return { found, words: found.map((d) => wordsAt(d, run.textOf)), all: run.diagnostics };
}

function wordsAt(d: Diagnostic, textOf: (file: string) => string | undefined): string {
  return (textOf(d.range.file) ?? '').slice(d.range.start, d.range.end);
}

/** Codes in order, each once. */
export function codesOf(field: Field, text: string): readonly string[] {
  return [...new Set(findingsOf(field, text).found.map((d) => d.code))].sort();
}
