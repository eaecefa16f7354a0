/** What a check says of the example shop after a change. */

import { runExample } from '../../src/pipeline/index.ts';
import type { Edit } from '../../src/rules/index.ts';

export const PUMP = 'machines/pump.yaml';
export const PROCEDURE = 'procedures/mw-1.yaml';

export const PATTERN = '    pattern: { circle: 240 mm, count: 8, first: 22.5 deg }\n';
const SOCKET = '    socket: socket-24\n';
const LARGE =
  '    when:\n      - only: { size: large }\n        pattern: { circle: 320 mm, count: 12, first: 15 deg }\n';

/** Further lines of the joint, indented like its own. */
export const added = (...lines: readonly string[]): Edit => ({
  file: PUMP,
  from: SOCKET,
  to: `${SOCKET}${lines.map((l) => `    ${l}\n`).join('')}`,
});

export const put = (file: string, from: string, to: string): Edit => ({ file, from, to });

/** One form of the joint only: eight bolts in both variants. */
export const ONE_FORM: Edit = put(PUMP, LARGE, '');

/** The joint without the maker's torque: computed from its preload. */
export const computed = (preload: string): Edit =>
  put(
    PUMP,
    '    preload: 70 %\n    torque: 160 N·m\n    source: { document: Pump manual, edition: "3", place: page 12 }\n',
    `    preload: ${preload}\n`,
  );

export interface Told {
  readonly message: string;
  readonly hint: string;
  /** The text at its place. */
  readonly at: string;
}

/** Reports of one check, in the order of the files. */
export function told(code: string, ...edits: readonly Edit[]): readonly Told[] {
  const { diagnostics, textOf } = runExample(edits);
  return diagnostics
    .filter((d) => d.code === code)
    .map((d) => ({
      message: d.message.replaceAll('\u00a0', ' '),
      hint: (d.hint ?? '').replaceAll('\u00a0', ' '),
      at: (textOf(d.range.file) ?? '').slice(d.range.start, d.range.end),
    }));
}
