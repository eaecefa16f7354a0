/** The revision to be issued is named as the shop names its revisions. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { compareMarks, isOfScheme, nextMark } from './marks.ts';

export const revisionOffScheme: Check = {
  code: 'REV010',
  name: 'revision-off-scheme',
  severity: 'error',
  title: 'The newest revision is not named by the scheme of the shop.',
  why: 'A fitter with card C and card 2 of one document in his hands cannot say which is the newer, and works from the one on top.',
  sources: [
    'ASME Y14.35: revision letters in order, without I, O, Q, S, X and Z; a mark is used once (memory)',
    'common practice: numbers where letters confuse, and one scheme through the whole shop',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
        to: '  - { rev: «"1"», effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
      },
    ],
    good: [
      {
        file: 'shop.yaml',
        from: 'card: { format: A4 }\n',
        to: 'card: { format: A4 }\ncontrol: { revisions: numbers }\n',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
        to: '  - { rev: "1", effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
      },
    ],
  },
  found: (shop, tell) => {
    const { scheme } = shop.info.control;
    for (const d of shop.documents) {
      // What has been issued keeps its mark, also where the shop has changed its scheme since.
      const { rev, effective } = d.revision;
      const older = d.revisions.slice(0, -1);
      // A mark that is used again is told by the check of the order.
      if (older.some((r) => r.rev === rev)) continue;
      const before = older.filter((r) => isOfScheme(r.rev, scheme)).at(-1);
      let problem: string | undefined;
      if (!isOfScheme(rev, scheme)) {
        problem = `is not ${scheme === 'letters' ? 'a letter' : 'a plain number'}, as the shop names its revisions`;
      } else if (before !== undefined && compareMarks(rev, before.rev, scheme) < 0 && effective >= before.effective) {
        problem = `follows revision \`${before.rev}\`, and comes before it in the scheme of the shop`;
      }
      if (problem === undefined) continue;
      tell(placeOf(d, 'revisions', d.revisions.length - 1, 'rev'), `revision \`${rev}\` of ${d.doc} ${problem}`, {
        hint: `write \`rev: ${written(nextMark(before?.rev, scheme))}\`; the scheme stands in shop.yaml as \`control: { revisions: ${scheme} }\``,
      });
    }
  },
};

/** A bare figure would be read as a number, and a revision is a text. */
function written(mark: string): string {
  return /^\d/.test(mark) ? `"${mark}"` : mark;
}
