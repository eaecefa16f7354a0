/** A file cannot be read from the disk. */

import type { Check } from '../check.ts';

export const unreadableFile: Check = {
  code: 'SRC002',
  name: 'unreadable-file',
  severity: 'error',
  title: 'A file cannot be read from the disk.',
  why: 'What cannot be read would be left out, and a binder would be printed that lacks a table or a whole procedure without saying so.',
  sources: ['common practice'],
  example: {
    bad: [{ file: 'tables/pump-manual.yaml', to: 'id: pump-manual\ntitle: Screws of the pump\n' }],
    badFiles: ['tables/pump-manual.yaml'],
    disk: { 'tables/pump-manual.yaml': 'unreadable' },
  },
  found: 'reading files',
};
