/** Computed torque tables against their own cross-checks. */

import { checkTorqueTable } from '../../torque/index.ts';
import type { Rule } from '../rule.ts';

export const torqueTableFault: Rule = {
  code: 'TRQ011',
  why: 'A table on the wall is copied more often than any card; one wrong cell spreads over the shop.',
  check: (shop, report) => {
    for (const table of shop.tables) {
      for (const fault of checkTorqueTable(table)) {
        report('TRQ011', { file: shop.info.file, start: 0, end: 0 }, `table ${table.title}: ${fault}`, {
          hint: 'this is a fault of the program or of its data: report it',
        });
      }
    }
  },
};
