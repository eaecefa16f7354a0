/** A limit judged with a tool that cannot read it: a socket, or a gauge of another quantity. */

import { isWritten, placeOf, type Tool } from '../../resolve/index.ts';
import { type Dimension, formatLimit } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { LEAST } from './coarse.ts';
import { canMeasure, dimensionOf, gaugesFor, graduationOf, readsDimension } from './gauge.ts';
import { eachJudged } from './measured.ts';

const SOURCE = '{ document: Pump manual, edition: "3", place: page 13 }';
const step = (tool: string): string => `      - do: Wipe both faces with a <consumable:wipe>.
        measure:
          what: hollow of the faces
          limit: 0 to 0.10 mm
          with: ${tool}
          if out: Tell the shop lead.
          source: ${SOURCE}
`;
const FROM = '      - do: Wipe both faces with a <consumable:wipe>.\n';

export const notAMeasuringTool: Check = {
  code: 'TOL008',
  name: 'not-a-measuring-tool',
  severity: 'error',
  title: 'A limit is judged with a tool that cannot read it.',
  why: 'The mechanic takes whatever gauge lies nearest, and nobody knows afterwards with what the figure was read.',
  sources: ['common practice: a pressure is read in bar, a gap in millimetres', 'ISO 9001:2015, 7.1.5.1 (memory)'],
  example: {
    bad: [{ file: 'procedures/mw-1.yaml', from: FROM, to: step('«gauge»') }],
    good: [{ file: 'procedures/mw-1.yaml', from: FROM, to: step('feeler') }],
  },
  found: eachJudged(({ measure, tool, shop, place }) => {
    const wanted = dimensionOf(measure.limit);
    const reads = readsDimension(tool);
    if (wanted === undefined || (canMeasure(tool) && (reads === undefined || reads === wanted))) return undefined;
    const fitting = gaugesFor(shop, measure.limit, LEAST).slice(0, 3);
    return {
      range: place('with'),
      message: `the limit of \`${measure.what}\` is ${measure.limitText}, and \`${tool.id}\` ${cannot(tool, wanted)}`,
      hint:
        fitting.length > 0
          ? `name a tool that reads it, such as ${fitting.map((t) => `\`${t.id}\``).join(', ')}`
          : `no tool of the register reads it: add one with its \`range\`, or give this one the \`range\` that it reads`,
      related: [
        {
          range: isWritten(tool, 'range') ? placeOf(tool, 'range') : placeOf(tool, 'kind'),
          message: `\`${tool.id}\` in the register of tools`,
        },
      ],
    };
  }),
};

function cannot(tool: Tool, wanted: Dimension): string {
  if (!canMeasure(tool)) return `(${tool.kind}) has no range that could read it`;
  if (tool.range !== undefined) return `reads ${formatLimit(tool.range)}`;
  return `reads in steps of ${graduationOf(tool)?.text ?? ''}, which is no ${wanted}`;
}
