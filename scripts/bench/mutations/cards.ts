/** What does not fit a card or cannot be printed. Such a fault is one of the whole step and stands at its first line. */

import type { Random } from '../random.ts';
import { itemLines, lineOf, over, type Put, type Slip, slip, written } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { inSteps, lineAfter } from './make.ts';
import type { Scene, StepPlace } from './scene.ts';
import { keyOf } from './sheet.ts';

/** A page of short paragraphs that somebody pastes into a note because it seemed worth keeping. */
const PAGE = Array.from(
  { length: 33 },
  (_, i) =>
    `The maker wrote in letter ${i + 1} that the bearing of the second ship ran warm, and the works looked at it in dock.`,
).join('\n\n');

/** Signs that are pasted from messages and foreign manuals, and that no workshop face holds. */
const SIGNS = ['🔧', '⚠️🛠', '締', '확', '螺栓', '🙂'];

/** A slip within a step, whose first line is the place of the report. */
function within(step: StepPlace, puts: readonly Put[]): Slip | undefined {
  const made = slip(step.sheet, puts);
  if (made === undefined) return undefined;
  const first = lineOf(step.sheet.text, itemLines(step.sheet, step.list.items[step.index]).start + 1);
  return { ...made, lines: made.lines.map(([from, to]) => [Math.min(first, from), to]) };
}

function retyped(keys: readonly string[], change: (value: string, random: Random) => string): (scene: Scene) => Site[] {
  return ({ steps }) =>
    steps.flatMap((s) =>
      inSteps([s], ...keys).map(
        ({ sheet, scalar }): Site =>
          (random) =>
            within(s, [over(sheet, scalar, change(String(scalar.value).trim().replace(/\.$/, ''), random))]),
      ),
    );
}

export const CARDS: readonly Kind[] = [
  {
    name: 'page of prose pasted into a note',
    checks: ['CRD001'],
    sites: ({ steps }) =>
      steps
        .filter((s) => s.own && !s.map.has('note'))
        .map((s) => () => {
          const last = s.map.items.at(-1);
          const put = last === undefined ? undefined : lineAfter(s.sheet, s.map, keyOf(last), `note: ${written(PAGE)}`);
          return put === undefined ? undefined : within(s, [put]);
        }),
  },
  {
    name: 'sign that no face of the card has',
    checks: ['CRD002'],
    sites: retyped(['do', 'note'], (v, random) => `${v} ${random.pick(SIGNS)}.`),
  },
  {
    name: 'part list pasted without its blanks, wider than the card',
    checks: ['CRD003'],
    sites: retyped(['note', 'hold'], (v) => `${v}: ${'M16x60galvanisedwithwasher17x30andnut'.repeat(5)}`),
  },
];
