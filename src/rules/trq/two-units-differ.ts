/** A value that a text gives in two units that do not belong together. */

import { convert, formatNumber, formatQuantity, type Quantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { withinText, writtenIn } from '../written.ts';
import { isNominal, pairAgrees, unitPairs } from './unit-pairs.ts';

export const twoUnitsDiffer: Check = {
  code: 'TRQ030',
  name: 'two-units-differ',
  severity: 'error',
  title: 'A text gives one value in two units, and the two differ by more than rounding.',
  why: 'One of the two was copied wrongly, and which of them the mechanic uses depends on the wrench that lies there.',
  sources: [
    'NIST SP 811, Appendix B: factors',
    'common practice: apart by more than 1 % and half the last digit of both',
    'TM 10-4320-346-12&P, Table H-1, prints 1820 lbf·ft beside 2712 N·m, which are 2000 lbf·ft',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: 'bench: pumps\n',
        to: 'bench: pumps\nabout: End-suction pump that delivers at «6.0 bar (78 psi)» with its valve shut.\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: 'bench: pumps\n',
        to: 'bench: pumps\nabout: End-suction pump that delivers at 6.0 bar (87 psi) with its valve shut.\n',
      },
    ],
  },
  found: (shop, tell) => {
    for (const text of writtenIn(shop).doubled) {
      for (const pair of unitPairs(text.value)) {
        if (pairAgrees(pair) || isNominal(pair, text.value)) continue;
        const { first, second } = pair;
        tell(
          withinText(text, pair.start, pair.start + pair.text.length),
          `\`${pair.text}\` gives two values: ${formatQuantity(first)} is ${inUnitOf(first, second)}`,
          {
            hint: `compare both with the source, digit by digit: ${formatQuantity(second)} would be ${inUnitOf(second, first)}`,
          },
        );
      }
    }
  },
};

/** `from` in the unit of `like`, with as many digits as that shows. */
function inUnitOf(from: Quantity, like: Quantity): string {
  const converted = convert(from, like.unit, like.decimals);
  // Few digits would hide the difference: `0 kN`.
  const decimals = Number(formatNumber(converted).replace('\u2212', '-')) === 0 ? like.decimals + 2 : like.decimals;
  return formatQuantity({ ...converted, decimals });
}
