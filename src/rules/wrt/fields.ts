/** Checks that look at one text at a time. */

import type { Step } from '../../resolve/index.ts';
import type { Run } from '../check.ts';
import { eachVariant } from '../rule.ts';
import { inEnglish } from './english.ts';
import type { Reading } from './reading.ts';
import { type Kind, placeIn, textsOf } from './texts.ts';

export type { Kind } from './texts.ts';

/** What the author calls each kind of text. */
export const KIND_NAMES: Readonly<Record<Kind, string>> = {
  do: 'step',
  note: 'note',
  hazard: 'hazard',
  avoid: 'avoidance',
  'if out': 'action out of limit',
  intro: 'introduction',
  purpose: 'purpose',
};

/** What is wrong with a text. */
export interface Finding {
  readonly message: string;
  readonly hint: string;
  /** The words at fault, as offsets in `Reading.text`; the whole field without them. */
  readonly start?: number;
  readonly end?: number;
}

/** Findings told of one text; more of them teach nothing. */
const MOST_TOLD = 20;

/** Each check has a bit in `Reading.clean`; there are 31. */
let checks = 0;

/**
 * A check of every text of the kinds named. `unless` may let a finding pass for what else the step says.
 * Silent where the shop does not write English.
 */
export function eachText(
  kinds: readonly Kind[],
  find: (reading: Reading, kind: Kind) => Iterable<Finding>,
  unless?: (step: Step, finding: Finding) => boolean,
): Run {
  const bit = 1 << checks++;
  return inEnglish(
    eachVariant(function* (scene) {
      const texts = textsOf(scene);
      for (const kind of kinds) {
        for (const text of texts.get(kind) ?? []) {
          const { reading, step } = text;
          if ((reading.clean & bit) !== 0) continue;
          let told = 0;
          for (const finding of find(reading, kind)) {
            told += 1;
            if (told > MOST_TOLD) break;
            if (step !== undefined && unless?.(step, finding)) continue;
            const range = placeIn(scene, text, finding.start, finding.end);
            yield { range, message: finding.message, hint: finding.hint, label: step?.label };
          }
          if (told === 0) reading.clean |= bit;
        }
      }
    }),
  );
}
