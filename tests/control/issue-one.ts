/** Issues one small revision into a shop's folder, as the commands write it: for tests of the writing itself. */

import { canonical, sha256 } from '../../src/control/canonical.ts';
import { diskFiles } from '../../src/control/files.ts';
import type { Entry } from '../../src/control/types.ts';
import { verifyLedger } from '../../src/control/verify-ledger.ts';
import { writeLines } from '../../src/control/write-ledger.ts';
import { fingerprintOf } from '../../src/resolve/fingerprint.ts';
import type { ControlRules } from '../../src/resolve/types.ts';

export const OPEN_RULES: ControlRules = {
  scheme: 'letters',
  signed: [],
  receiptDays: { suspension: 1, major: 3, minor: 7 },
  temporaryMost: 2,
  temporaryDays: 90,
  dueSoonDays: 60,
  freshDays: 30,
};

export function issueOne(folder: string, doc: string): readonly Entry[] {
  return writeLines(folder, () => {
    const faults: string[] = [];
    const { ledger } = verifyLedger(diskFiles(folder), 'shop', OPEN_RULES, (_, __, message) => faults.push(message));
    if (faults.length > 0) throw new Error(faults.join('; '));
    const text = `${canonical({ doc, format: 1 })}\n`;
    const changes = `${canonical({ doc, marks: {} })}\n`;
    const digest = sha256(doc);
    return {
      ledger,
      today: '2026-03-01',
      files: [
        { file: `${doc}/A.json`, text },
        { file: `${doc}/A.changes.json`, text: changes },
      ],
      acts: [
        {
          kind: 'issue',
          doc,
          rev: 'A',
          title: 'A procedure',
          change: { class: 'minor', what: 'First issue', why: 'New' },
          affects: [],
          author: 'ada',
          approver: 'ben',
          approved: '2026-02-28',
          effective: '2026-03-01',
          snapshot: { file: `${doc}/A.json`, sha256: sha256(text), format: 1, engine: '0.1.0' },
          comparison: { file: `${doc}/A.changes.json`, sha256: sha256(changes) },
          cards: [{ variant: '', label: '', path: `C/${doc}/A`, fingerprint: fingerprintOf(digest), digest, sides: 1 }],
          distribution: [],
        },
      ],
    };
  });
}
