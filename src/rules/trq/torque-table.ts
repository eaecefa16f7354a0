/** Computed torque tables against their own cross-checks, each for itself and side by side. */

import { checkAcrossClasses, checkTorqueTable } from '../../torque/index.ts';
import type { Check } from '../check.ts';

export const torqueTableFault: Check = {
  code: 'TRQ011',
  name: 'torque-table',
  severity: 'error',
  title: 'A computed torque table fails its own cross-check.',
  why: 'A table on the wall is copied more often than any card; one wrong cell spreads over the shop.',
  sources: ['Shigley, Mechanical Engineering Design, chapter 8, and VDI 2230 Part 1: two routes to one torque'],
  example: {
    bad: [
      {
        file: 'shop.yaml',
        from: '  - { grade: "8.8", series: coarse, condition: oiled, preload: 70 % }\n',
        to: '  - { grade: ASTM A574, series: UNF, to: 1/4-28 UNF, condition: oiled, preload: 70 % }\n',
      },
    ],
    badFiles: ['shop.yaml'],
    good: [
      {
        file: 'shop.yaml',
        from: '  - { grade: "8.8", series: coarse, condition: oiled, preload: 70 % }\n',
        to: '  - { grade: ASTM A574, series: UNF, from: 1/4-28 UNF, condition: oiled, preload: 70 % }\n',
      },
    ],
  },
  found: (shop, tell) => {
    const faults = [
      ...shop.tables.flatMap((table) => checkTorqueTable(table).map((fault) => `table ${table.title}: ${fault}`)),
      ...checkAcrossClasses(shop.tables),
    ];
    for (const fault of faults) {
      tell({ file: shop.info.file, start: 0, end: 0 }, fault, {
        hint: 'this is a fault of the program or of its data: report it',
      });
    }
  },
};
