/** A tool that is past its date when the procedure that names it takes effect. */

import { type Document, placeOf, type ResolvedShop } from '../../resolve/index.ts';
import type { Check } from '../check.ts';

const DATE = /^\d{4}-\d\d-\d\d$/;

export const calibrationOverdue: Check = {
  code: 'TOL006',
  name: 'calibration-overdue',
  severity: 'error',
  title: 'A tool is due for calibration before a procedure that uses it takes effect.',
  why: 'The tool crib holds the tool back, or the job is done with a wrench or a gauge that nobody vouches for.',
  sources: [
    'ISO 6789: torque tools every 12 months or 5000 cycles, whichever comes first (read in summary)',
    'ISO 9001:2015, 7.1.5.2: calibrated at set intervals (read in summary)',
    'common practice: lifting gear and gas detectors carry a date of the same kind',
  ],
  example: {
    bad: [
      {
        file: 'tools.yaml',
        from: 'serial: MW-TW-2, calibration_due: 2027-03-01 }',
        to: 'serial: MW-TW-2, calibration_due: «2025-12-01» }',
      },
    ],
  },
  found: (shop, tell) => {
    const users = usersOf(shop);
    for (const tool of shop.tools) {
      const due = tool.calibrationDue;
      if (due === undefined || !DATE.test(due)) continue;
      const late = (users.get(tool.id) ?? []).filter(
        (d) => DATE.test(d.revision.effective) && due < d.revision.effective,
      );
      const [first, ...more] = late;
      if (first === undefined) continue;
      const { rev, effective, range } = first.revision;
      const others = more.length === 0 ? '' : `; so do ${more.map((d) => d.doc).join(', ')}`;
      tell(
        placeOf(tool, 'calibration_due'),
        `\`${tool.id}\` is due for calibration on ${due}, and ${first.doc} revision ${rev}, which uses it, takes effect later, on ${effective}${others}`,
        {
          hint: `write the date of its new label when it has been calibrated, or name another tool in ${first.doc}`,
          related: [{ range, message: `${first.doc} revision ${rev}, effective ${effective}` }],
        },
      );
    }
  },
};

/** Documents by the tools that any of their cards lists. */
function usersOf(shop: ResolvedShop): ReadonlyMap<string, readonly Document[]> {
  const users = new Map<string, Document[]>();
  for (const document of shop.documents) {
    const ids = new Set(document.variants.flatMap((v) => v.tools.map((t) => t.id)));
    for (const id of ids) {
      const known = users.get(id);
      if (known === undefined) users.set(id, [document]);
      else known.push(document);
    }
  }
  return users;
}
