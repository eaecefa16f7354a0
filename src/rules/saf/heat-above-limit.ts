/** A part that is heated further than the shop allows. */

import { placeOf } from '../../resolve/index.ts';
import { formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachStep } from '../rule.ts';

export const heatAboveLimit: Check = {
  code: 'SAF012',
  name: 'heat-above-limit',
  severity: 'error',
  title: 'A part is heated above the limit of the shop.',
  why: 'Bearing steel is tempered above 120 °C: the ring goes soft without showing it, and fails in service.',
  sources: [
    'makers of rolling bearings: heat to about 110 °C and never above 120 °C (read in summary), unless shop.yaml sets another limit',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: 'ppe: [gloves, eye protection]',
        to: 'ppe: [gloves, eye protection, heat gloves]',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
`,
        to: `      - do: Lay on the new <part:gasket>.
        fit: [gasket, cover]
        heat: { to: 110 degC, most: «150 degC» }
`,
      },
    ],
  },
  found: eachStep((step, { shop }) => {
    const { heat } = step;
    const { heatLimit: limit } = shop.info;
    if (heat === undefined || Math.max(heat.to.si, heat.most.si) <= limit.si) return undefined;
    const key = heat.to.si > limit.si ? 'to' : 'most';
    return {
      range: placeOf(step, 'heat', key),
      message: `heated to ${key === 'to' ? '' : 'at most '}${formatQuantity(heat[key])}, and the limit of the shop is ${formatQuantity(limit)}`,
      hint: `keep it at ${formatQuantity(limit)} or below; where the makers of the parts allow more, set \`limits: { heat: … }\` in shop.yaml`,
    };
  }),
};
