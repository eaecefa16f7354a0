/** A part comes off to be used again and never goes back. */

import type { Check } from '../check.ts';
import { CONSERVATION, eachLifeFault, placeOfMove } from './life-check.ts';

export const neverRefitted: Check = {
  code: 'PRT003',
  name: 'never-refitted',
  severity: 'error',
  title: 'A part comes off to be inspected or used again, and is not fitted again by the end of the card.',
  why: 'The machine is closed and handed back, and the part is found in the bin, or is not found at all.',
  sources: [CONSERVATION],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '        remove: { plug: reuse }\n',
        to: '        remove: { «plug»: reuse }\n',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Fit the <part:plug>.\n        only: { size: large }\n        fit: [plug]\n',
        to: '',
      },
    ],
  },
  found: eachLifeFault('never refitted', ({ life: { id }, move }) => ({
    range: placeOfMove(move),
    message: `\`${id}\` comes off to be ${move.fate === 'inspect' ? 'inspected and used' : 'used'} again, and is not fitted again by the end`,
    hint: `write \`fit: [${id}]\` in the step that puts it back, or \`discard\` as its fate with a new one fitted; when another procedure puts it back, name \`<part:${id}>\` and \`<procedure:…>\` together in one step`,
  })),
};
