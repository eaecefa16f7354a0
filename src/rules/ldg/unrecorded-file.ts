/** A file stands among the issued ones, and no line of the ledger names it. */

import type { Check } from '../check.ts';
import type { Edit } from '../example/example.ts';
import { issued, ledgerAside, lines, SNAPSHOT } from './example-ledger.ts';

export const unrecordedFile: Check = {
  code: 'LDG006',
  name: 'unrecorded-file',
  severity: 'error',
  title: 'A file stands among the issued ones, and no line of the ledger names it.',
  why: 'Either it was put there by hand, and somebody may take it for a revision; or the line that issued it was lost, and the bench works to an older one.',
  sources: ['ISO 9001:2015, 7.5.3.2: control of changes (memory)', 'common practice'],
  example: {
    get bad(): readonly Edit[] {
      return [...ledgerAside(lines([issued()])), { file: 'issued/MW-1/B.json', to: SNAPSHOT }];
    },
    badFiles: ['issued/MW-1/B.json'],
    get good(): readonly Edit[] {
      return ledgerAside(lines([issued()]));
    },
  },
  found: 'reading the ledger',
};
