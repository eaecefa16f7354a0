/** Two tools have one serial number. */

import { placeOf, type Tool } from '../../resolve/index.ts';
import type { Check } from '../check.ts';

export const duplicateSerial: Check = {
  code: 'REF023',
  name: 'duplicate-serial',
  severity: 'error',
  title: 'Two tools of the register have one serial number.',
  why: 'When a gauge fails its calibration, every job done with its serial is looked up again. With two tools under one number, half of those jobs are the wrong ones and the other half is not found.',
  sources: [
    'ISO 9001:2015, 7.1.5.2: measuring tools are identified, and earlier results are judged (read second-hand)',
  ],
  example: {
    bad: [
      {
        file: 'tools.yaml',
        from: 'range: 0 to 6 bar, step: 0.05 bar, serial: MW-PG-4,',
        to: 'range: 0 to 6 bar, step: 0.05 bar, serial: «MW-FG-1»,',
      },
    ],
  },
  found: ({ tools }, tell) => {
    const first = new Map<string, Tool>();
    for (const tool of tools) {
      if (tool.serial === undefined) continue;
      // Written with a blank or in small letters it is still the same plate.
      const key = tool.serial.replace(/\s+/g, '').toUpperCase();
      const other = first.get(key);
      if (other === undefined) {
        first.set(key, tool);
        continue;
      }
      tell(placeOf(tool, 'serial'), `\`${tool.id}\` and \`${other.id}\` both have the serial \`${tool.serial}\``, {
        related: [{ range: placeOf(other, 'serial'), message: `serial of \`${other.id}\`` }],
        hint: 'read both plates, and write what stands on each',
      });
    }
  },
};
