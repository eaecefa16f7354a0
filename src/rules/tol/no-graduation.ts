/** A torque wrench, or a gauge that judges a limit, without its graduation. */

import { isWritten, type ResolvedShop, type Tool } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { canMeasure } from './gauge.ts';
import { judgingTools } from './measured.ts';

export const noGraduation: Check = {
  code: 'TOL009',
  name: 'no-graduation',
  severity: 'warning',
  title: 'A torque wrench or a gauge has no graduation in the register.',
  why: 'Nobody sees that a limit is finer than the scale can show, and a computed torque is set between two marks.',
  sources: ['common practice: a gauge is chosen by its range and its graduation'],
  example: {
    bad: [
      {
        file: 'tools.yaml',
        from: 'feeler: { name: feeler gauge, kind: measuring tool, range: 0.05 to 1.00 mm, step: 0.01 mm,',
        to: '«feeler»: { name: feeler gauge, kind: measuring tool, range: 0.05 to 1.00 mm,',
      },
    ],
  },
  found: (shop, tell) => {
    // What seems to be missing may be what could not be read.
    if (shop.incomplete === true) return;
    for (const tool of shop.tools) {
      if (tool.step !== undefined || isWritten(tool, 'step') || !needsScale(tool, shop)) continue;
      const what = tool.kind === 'torque wrench' ? 'is a torque wrench' : use(tool, shop);
      tell(tool.keyRange, `\`${tool.id}\` ${what} and has no \`step\``, {
        hint: 'read it from the scale and write it: `step:` with the distance of two marks, or the last digit that it shows, in the form `0.01 mm`',
      });
    }
  },
};

/** A straight edge or a magnetic base is a measuring tool without a scale: it is asked only when it has a range or judges. */
function needsScale(tool: Tool, shop: ResolvedShop): boolean {
  if (tool.kind === 'torque wrench') return true;
  if (tool.kind === 'measuring tool' && tool.range !== undefined) return true;
  return canMeasure(tool) && judgingTools(shop).has(tool.id);
}

function use(tool: Tool, shop: ResolvedShop): string {
  return judgingTools(shop).has(tool.id) ? 'judges a limit' : 'is a measuring tool with a range';
}
