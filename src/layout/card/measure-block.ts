/** A measurement: the limit as the largest type, the places to measure as blanks with their unit, what to do when out. */

import { measuredText } from '../../resolve/joint-words.ts';
import type { Measure } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { boxRow } from './blanks.ts';
import { type Arrangement, chooseLowest } from './choose.ts';
import { type Block, mm, overlay, shift, stack } from './items.ts';
import { setProse } from './prose.ts';
import { ruled } from './ruled.ts';
import { paragraph, type Setting, span } from './setting.ts';
import { sourceText } from './source-text.ts';

/** Widths of the words beside the blanks, the preferred one first. */
const LEFT_WIDTHS = [mm(66), mm(48)];
const LEAST_BLANKS = mm(40);
const GAP = mm(5);

export function measureBlock(setting: Setting, measure: Measure, width: number): Block {
  const { type } = setting.format;
  const upper = chooseLowest(setting, [
    ...LEFT_WIDTHS.filter((left) => width - left - GAP >= LEAST_BLANKS).map(
      (left): Arrangement =>
        (trial) =>
          overlay(limitWords(trial, measure, left), shift(blanks(trial, measure, width - left - GAP), left + GAP, 0)),
    ),
    (trial) => stack([limitWords(trial, measure, width), blanks(trial, measure, width)], mm(1.5)),
  ]);
  const out = setProse(setting, measure.ifOut, type.table, width, {
    lead: [span('If out of limit: ', type.table, 'bold')],
  });
  const source =
    measure.source === undefined
      ? []
      : [
          paragraph(
            setting,
            [span('From ', type.small, 'semibold', 'soft'), span(sourceText(measure.source), type.small)],
            width,
          ),
        ];
  return ruled(stack([upper, out, ...source], mm(1.2)), width);
}

/** What is measured, the limit in the largest type, and with what. */
function limitWords(setting: Setting, measure: Measure, width: number): Block {
  const { type } = setting.format;
  return stack(
    [
      paragraph(setting, [span(capitalised(measuredText(measure)), type.step, 'semibold')], width),
      paragraph(setting, [span(noBreak(measure.limitText), type.value, 'bold')], width, { lead: mm(8.5) }),
      paragraph(setting, [span('With ', type.small, 'semibold', 'soft'), span(measure.toolName, type.table)], width),
    ],
    mm(0.2),
  );
}

function blanks(setting: Setting, measure: Measure, width: number): Block {
  const { small } = setting.format.type;
  return stack(
    [
      paragraph(setting, [span(capitalised(measure.record ?? 'measured'), small, 'bold')], width),
      boxRow(setting, measure.at, measure.unit, width),
    ],
    mm(0.8),
  );
}

function noBreak(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}
