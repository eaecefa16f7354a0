/** Signs of YAML itself that a hand loses or adds. */

import { isMap } from 'yaml';
import { slip } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { typedOver } from './make.ts';
import type { Scene } from './scene.ts';
import type { Sheet } from './sheet.ts';

/** Places of a pattern in procedure and machine, each changed in the same way. */
function places(pattern: RegExp, put: (found: RegExpMatchArray) => string): (scene: Scene) => Site[] {
  return ({ procedure, machine }) =>
    [procedure, machine].flatMap((sheet: Sheet) =>
      [...sheet.text.matchAll(pattern)].map(
        (m) => () => typedOver(sheet, { start: m.index, end: m.index + m[0].length }, put(m)),
      ),
    );
}

export const YAML_SIGNS: readonly Kind[] = [
  { name: 'line indented with a tab', checks: ['SRC007'], sites: places(/^ {4,8}(?=[a-z]+:)/gm, () => '\t\t') },
  { name: 'closing quote lost', checks: ['SRC006'], sites: places(/"(?=[ ,}]*$)/gm, () => '') },
  { name: 'closing bracket lost', checks: ['SRC006'], sites: places(/\]$/gm, () => '') },
  { name: 'closing brace lost', checks: ['SRC006'], sites: places(/\}$/gm, () => '') },
  {
    name: 'comma lost in a map on one line',
    checks: ['SRC006', 'FLD001', 'FLD002', 'FLD004', 'FLD005'],
    sites: places(/, (?=[a-z-]+: [^,]*\}$)/gm, () => ' '),
  },
  {
    name: 'line pasted twice, so that a key stands twice',
    checks: ['SRC009'],
    sites: places(
      /^ +(?:torque|thread|grade|limit|hold|tighten|kind|number|wrench): [^\n]*\n/gm,
      ([line]) => `${line}${line}`,
    ),
  },
  {
    name: 'anchor and alias for what repeats',
    checks: ['SRC008'],
    sites: places(/(?<=^ +(?:source|remove|measure|lift|pattern): )(?=\{)/gm, () => '&one '),
  },
  {
    name: 'line indented by one blank too many',
    checks: ['SRC006', 'FLD003', 'FLD001'],
    // Between two keys of one map, where the blank breaks the map.
    sites: places(/(?<=\n( +)[a-z]+: [^\n>|]+\n)(?=\1[a-z]+: )/g, () => ' '),
  },
  {
    name: 'colon with a blank in a plain text',
    checks: ['SRC006', 'FLD003'],
    sites: places(/(?<=^ +- do: [A-Z][^\n"':<]*) (?=[a-z]+ [^\n]*\.$)/gm, () => ': '),
  },
  {
    name: 'blank after a colon lost',
    checks: ['SRC006', 'FLD001', 'FLD002', 'FLD003'],
    sites: places(/(?<=^ +[a-z]+:) (?=[a-z\d])/gm, () => ''),
  },
  {
    name: 'file saved empty',
    checks: ['SRC010'],
    sites: ({ procedure, machine }) =>
      [procedure, machine].map((sheet) => () => slip(sheet, [{ start: 0, end: sheet.text.length, put: '\n' }])),
  },
  {
    name: 'second document pasted below the first',
    checks: ['SRC011'],
    sites: ({ procedure, machine }) =>
      [procedure, machine].map((sheet) => () => {
        const at = sheet.text.length;
        return isMap(sheet.root)
          ? slip(sheet, [{ start: at, end: at, put: `---\n${sheet.text.slice(0, 200)}\n` }])
          : undefined;
      }),
  },
  {
    name: 'dash of a step lost',
    checks: ['SRC006', 'SRC009', 'FLD003'],
    sites: places(/^( +)- (?=do: )/gm, ([, indent]) => `${indent ?? ''}  `),
  },
];
