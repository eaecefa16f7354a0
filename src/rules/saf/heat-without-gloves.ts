/** Hot work without heat gloves on the card. */

import { placeOf } from '../../resolve/index.ts';
import { formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachStep } from '../rule.ts';

/** Kelvin: bare metal at 60 degC burns a hand that holds on for five seconds. */
const BURNS = 273.15 + 60;

export const heatWithoutGloves: Check = {
  code: 'SAF013',
  name: 'heat-without-gloves',
  severity: 'warning',
  title: 'A part is heated above 60 °C, and the protection of the card has no heat gloves.',
  why: 'The ring has to be held against its shoulder until it grips; in thin gloves it is let go, or it burns the palm.',
  sources: ['ASTM C1055: metal at 60 °C burns within five seconds of contact (memory)'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
`,
        to: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
        heat: «{ to: 90 degC, most: 110 degC }»
`,
      },
    ],
  },
  found: eachStep((step, { variant }) => {
    if (step.heat === undefined || step.heat.to.si <= BURNS || variant.ppe.includes('heat gloves')) return undefined;
    return {
      range: placeOf(step, 'heat'),
      message: `heated to ${formatQuantity(step.heat.to)}, and the card asks for no heat gloves`,
      hint: 'add `heat gloves` to the `ppe` of the procedure',
    };
  }),
};
