/** A limit that the tool named for it cannot reach. */

import { placeOf } from '../../resolve/index.ts';
import { formatLimit, formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { LEAST } from './coarse.ts';
import { endOutOfRange, gaugesFor, isFromZero } from './gauge.ts';
import { eachJudged } from './measured.ts';

export const gaugeRange: Check = {
  code: 'TOL005',
  name: 'gauge-range',
  severity: 'error',
  title: 'An acceptance limit lies outside the range of the tool that judges it.',
  why: 'The pointer stands at its stop or the jaws do not open so far, and a figure is written down all the same.',
  sources: ['common practice: a tool judges only within its marked range', 'ISO 9001:2015, 7.1.5.1 (memory)'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          limit: 0.05 to 0.30 mm\n          with: feeler\n',
        to: '          limit: «0.5 to 3.0 mm»\n          with: feeler\n',
      },
    ],
  },
  found: eachJudged(({ measure, tool, shop, place }) => {
    const end = endOutOfRange(measure.limit, tool);
    if (end === undefined || tool.range === undefined) return undefined;
    const fitting = gaugesFor(shop, measure.limit, LEAST).slice(0, 3);
    const thinner = isFromZero(measure.limit) ? 'its upper end ' : '';
    return {
      range: place('limit'),
      message: `the limit of \`${measure.what}\` is ${measure.limitText}, and ${thinner}${thinner === '' ? `${formatQuantity(end)} ` : ''}lies outside the range of \`${tool.id}\`, ${formatLimit(tool.range)}`,
      hint:
        fitting.length > 0
          ? `name another tool in \`with\`: ${fitting.map((t) => `\`${t.id}\``).join(', ')} ${fitting.length === 1 ? 'reaches' : 'reach'} it; or compare the limit with its source`
          : 'compare the limit with its source; if it is right, add a tool that reaches it: none of the register does',
      related: [{ range: placeOf(tool, 'range'), message: `range of \`${tool.id}\`` }],
    };
  }),
};
