/** Revision letters that are read as something else. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';

const CONFUSED: Readonly<Record<string, string>> = { I: '1', O: '0', Q: '0', S: '5', X: 'a cross', Z: '2' };

export const confusableRevision: Check = {
  code: 'REV009',
  name: 'confusable-revision',
  severity: 'warning',
  title: 'The mark of the revision in force has a letter that is read as a figure.',
  why: 'On a greasy card revision S is a 5 and revision O is nothing at all; the comparison with the list of revisions goes wrong.',
  sources: ['ASME Y14.35: revision letters leave out I, O, Q, S, X and Z (memory)'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
        to: '  - { rev: «S», effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n',
      },
    ],
  },
  found: (shop, tell) => {
    // Where revisions are numbers, a letter is off the scheme altogether.
    if (shop.info.control.scheme === 'numbers') return;
    for (const d of shop.documents) {
      // What has been issued keeps its mark; only the revision in force can still be named.
      const { rev } = d.revision;
      const letter = [...rev].find((c) => CONFUSED[c] !== undefined);
      if (letter === undefined) continue;
      tell(
        placeOf(d, 'revisions', d.revisions.length - 1, 'rev'),
        `revision \`${rev}\` of ${d.doc} has the letter \`${letter}\`, which is read as ${CONFUSED[letter]}`,
        { hint: `write \`rev: ${next(rev, letter)}\`: the letters I, O, Q, S, X and Z are left out` },
      );
    }
  },
};

/** The mark with the next letter that cannot be misread: `T` for `S`. */
function next(rev: string, letter: string): string {
  const after = letter === 'Z' ? 'AA' : String.fromCharCode(letter.charCodeAt(0) + 1);
  return rev.replace(letter, after);
}
