/** A measuring tool or torque wrench of which nobody knows when it is due. */

import { isWritten } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { canMeasure } from './gauge.ts';
import { judgingTools } from './measured.ts';

export const noCalibrationDate: Check = {
  code: 'TOL007',
  name: 'no-calibration-date',
  severity: 'warning',
  title: 'A measuring tool or torque wrench has no calibration date, and nothing says that it needs none.',
  why: 'Nobody takes it out of use when it is due, and what it read in the meantime has to be measured again.',
  sources: [
    'ISO 9001:2015, 7.1.5.2: measuring equipment is calibrated at set intervals and shows its status (read in summary)',
    'ISO 6789: torque tools every 12 months or 5000 cycles (read in summary)',
  ],
  example: {
    bad: [
      {
        file: 'tools.yaml',
        from: 'feeler: { name: feeler gauge, kind: measuring tool, range: 0.05 to 1.00 mm, step: 0.01 mm, serial: MW-FG-1, calibration_due: 2027-06-01 }',
        to: '«feeler»: { name: feeler gauge, kind: measuring tool, range: 0.05 to 1.00 mm, step: 0.01 mm, serial: MW-FG-1 }',
      },
    ],
    good: [
      {
        file: 'tools.yaml',
        from: 'serial: MW-FG-1, calibration_due: 2027-06-01 }',
        to: 'serial: MW-FG-1, uncalibrated: blades are thrown away when bent and measured when doubted }',
      },
    ],
  },
  found: (shop, tell) => {
    if (shop.incomplete === true) return;
    for (const tool of shop.tools) {
      const kept = tool.kind === 'measuring tool' || tool.kind === 'torque wrench';
      if (!kept && !(canMeasure(tool) && judgingTools(shop).has(tool.id))) continue;
      if (isWritten(tool, 'calibration_due') || isWritten(tool, 'uncalibrated')) continue;
      const what =
        tool.kind === 'torque wrench' ? 'torque wrench' : kept ? 'measuring tool' : 'tool that judges a limit';
      tell(tool.keyRange, `\`${tool.id}\` is a ${what} without \`calibration_due\``, {
        hint:
          tool.kind === 'torque wrench'
            ? 'read the label on the tool and write its date as `calibration_due: YYYY-MM-DD`'
            : 'read the label on the tool and write its date as `calibration_due: YYYY-MM-DD`, or `uncalibrated:` with the reason why it needs none',
      });
    }
  },
};
