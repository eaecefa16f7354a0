/** Computed torque tables against their own cross-checks, each for itself and side by side. */

import { checkAcrossClasses, checkTorqueTable } from '../../torque/index.ts';
import type { Rule } from '../rule.ts';

export const torqueTableFault: Rule = {
  code: 'TRQ011',
  why: 'A table on the wall is copied more often than any card; one wrong cell spreads over the shop.',
  check: (shop, report) => {
    const faults = [
      ...shop.tables.flatMap((table) => checkTorqueTable(table).map((fault) => `table ${table.title}: ${fault}`)),
      ...checkAcrossClasses(shop.tables),
    ];
    for (const fault of faults) {
      report('TRQ011', { file: shop.info.file, start: 0, end: 0 }, fault, {
        hint: 'this is a fault of the program or of its data: report it',
      });
    }
  },
};
