/** A measurement: the limit as the largest type, the places to measure as blanks with their unit, what to do when out. */

import type { Measure } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { boxRow } from './blanks.ts';
import { type Block, mm, node, overlay, shift, stack } from './items.ts';
import { setProse } from './prose.ts';
import { paragraph, type Setting, span } from './setting.ts';

export function measureBlock(setting: Setting, measure: Measure, width: number): Block {
  const { type } = setting.format;
  const wide = width > mm(120);
  const left = wide ? mm(66) : width;
  const what = paragraph(setting, [span(capitalised(measure.what), type.step, 'semibold')], left);
  const limit = paragraph(setting, [span(noBreak(measure.limitText), type.value, 'bold')], left, { lead: mm(8.5) });
  const tool = paragraph(
    setting,
    [span('With ', type.small, 'semibold', 'soft'), span(measure.toolName, type.table)],
    left,
  );
  const words = stack([what, limit, tool], mm(0.2));
  const blanksWidth = wide ? width - left - mm(5) : width;
  const label = paragraph(setting, [span(capitalised(measure.record ?? 'measured'), type.small, 'bold')], blanksWidth);
  const boxes = boxRow(setting, measure.at, measure.unit, blanksWidth);
  const blanks = stack([label, boxes], mm(0.8));
  const upper = wide ? overlay(words, shift(blanks, left + mm(5), 0)) : stack([words, blanks], mm(1.5));
  const out = setProse(setting, measure.ifOut, type.table, width, {
    lead: [span('If out of limit: ', type.table, 'bold')],
  });
  const source =
    measure.source === undefined
      ? []
      : [
          paragraph(
            setting,
            [
              span('From ', type.small, 'semibold', 'soft'),
              span(
                [measure.source.document, measure.source.edition, measure.source.place]
                  .filter((t) => t !== undefined)
                  .join(', '),
                type.small,
              ),
            ],
            width,
          ),
        ];
  const inner = shift(stack([upper, out, ...source], mm(1.2)), 0, mm(1.8));
  const height = inner.height + mm(3.4);
  return {
    height,
    decoration: [
      { kind: 'line', x1: 0, y1: 0, x2: width, y2: 0, width: 0.75, ink: 'rule' },
      { kind: 'line', x1: 0, y1: height, x2: width, y2: height, width: 0.75, ink: 'rule' },
      ...inner.decoration,
    ],
    nodes: [node('Div', [], inner.nodes)],
  };
}

function noBreak(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}
