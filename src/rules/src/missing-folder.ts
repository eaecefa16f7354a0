/** The shop folder, or a file that every shop has, is not there. */

import type { Check } from '../check.ts';

export const missingFolder: Check = {
  code: 'SRC001',
  name: 'missing-folder',
  severity: 'error',
  title: 'The shop folder, or a file that every shop has, is not there.',
  why: 'Every card is compared with the registers. Without one of them a torque wrench, a lubricant or an approver on a card is a word that nobody has checked.',
  sources: ['common practice: a register that can be mislaid without a word is not one'],
  example: {
    bad: [{ file: 'benches.yaml', to: null }],
    badFiles: ['benches.yaml'],
  },
  found: 'reading files',
};
