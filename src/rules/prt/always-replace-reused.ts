/** A part that serves once goes back. */

import type { Check } from '../check.ts';
import { eachVariant } from '../rule.ts';
import { labelled, listedPart, placeOfMove } from './life-check.ts';
import { placeOfFate, reuseHint, servesOnce, usedAgain } from './serves-once.ts';

export const alwaysReplaceReused: Check = {
  code: 'PRT011',
  name: 'always-replace-reused',
  severity: 'error',
  title: 'A part that is renewed each time goes back, and no reason with its source is given.',
  why: 'A gasket that has been pressed does not seal again, and a split pin bent twice breaks where nobody sees it.',
  sources: [
    'TB 43-0218, section III, paragraph 5: cotter pins, lock wire and lock washers are thrown away when they come off',
    "ASME PCC-1: a gasket is not used again (memory); makers' workshop manuals for O-rings and seals (common practice)",
    'common practice: copper and bonded washers are thrown away, unless the procedure anneals the copper',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: 'remove: { cover: reuse, gasket: discard, screw: inspect }',
        to: 'remove: { cover: reuse, gasket: «inspect», screw: inspect }',
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const { life, off, on } of usedAgain(scene)) {
      const why = life.part.pastYield === true ? undefined : servesOnce(life.part);
      if (why === undefined) continue;
      yield labelled(off.step, {
        range: placeOfFate(off),
        message: `\`${life.id}\` comes off as \`${off.fate}\` and goes back, but ${why}`,
        related: [{ range: placeOfMove(on), message: 'it goes back here' }, listedPart(life.part)],
        hint: reuseHint(life.id),
      });
    }
  }),
};
