/** Cards of the example shop with other steps: for the checks that follow parts and joints through a card. */

import { runExample } from '../../src/pipeline/index.ts';
import { EXAMPLE_SHOP } from '../../src/rules/index.ts';

export interface Card {
  /** Steps as YAML list items, indented by nothing; they stand between isolation and close-out. */
  readonly steps: string;
  /** Further parts, as lines of the parts list. */
  readonly parts?: readonly string[];
  /** Replacements in the machine's file. */
  readonly machine?: readonly (readonly [string, string])[];
  /** Further consumables, as lines of the register. */
  readonly consumables?: readonly string[];
}

export interface Report {
  readonly code: string;
  readonly message: string;
  /** The text at its place. */
  readonly at: string;
}

const MACHINE = 'machines/pump.yaml';
const PROCEDURE = 'procedures/mw-1.yaml';
const CONSUMABLES = 'consumables.yaml';

/** Reports of the parts and joints on such a card: other families judge its words and its safety. */
export function follow({ steps, parts = [], machine = [], consumables = [] }: Card): readonly Report[] {
  const procedure = file(PROCEDURE);
  const head = procedure.slice(0, procedure.indexOf('  - title: Open\n'));
  const indented = steps
    .trim()
    .split('\n')
    .map((l) => `      ${l}\n`)
    .join('');
  const own = parts.map((p) => `  ${p}\n`).join('');
  const edits = [
    { file: PROCEDURE, to: `${head}  - title: Work\n    steps:\n${indented}  - use: close-out\n` },
    {
      file: MACHINE,
      to: machine
        .reduce((text, [from, to]) => replaced(text, from, to), file(MACHINE))
        .replace('joints:\n', `${own}joints:\n`),
    },
    { file: CONSUMABLES, to: file(CONSUMABLES) + consumables.map((c) => `${c}\n`).join('') },
  ];
  const { diagnostics, textOf } = runExample(edits);
  const unread = diagnostics.filter((d) => /^(?:SRC|FLD|REF00)/.test(d.code));
  if (unread.length > 0) throw new RangeError(unread.map((d) => `${d.code} ${d.message}`).join('\n'));
  return diagnostics
    .filter((d) => /^(?:PRT|JNT)/.test(d.code))
    .map((d) => ({
      code: d.code,
      message: d.message.replaceAll('\u00a0', ' '),
      at: (textOf(d.range.file) ?? '').slice(d.range.start, d.range.end),
    }));
}

export function codes(card: Card): readonly string[] {
  return follow(card).map((r) => r.code);
}

function file(name: string): string {
  return EXAMPLE_SHOP[name] ?? '';
}

function replaced(text: string, from: string, to: string): string {
  if (text.split(from).length !== 2) throw new RangeError(`\`${from}\` does not stand once in ${MACHINE}`);
  return text.replace(from, to);
}
