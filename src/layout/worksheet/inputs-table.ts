/** The inputs of a joint as a table: letter, what it is, value, where it is from. */

import type { JointPlan } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { symbolMark } from '../../torque/formula/index.ts';
import { type Block, type Content, mm, node } from '../card/items.ts';
import { baseline, paragraph, type Setting, span } from '../card/setting.ts';
import { shareWidth, type Table } from '../card/table.ts';
import type { Span } from '../type/index.ts';
import { formulaBox, movedBox } from './formula-box.ts';
import { type JointInput, jointInputs } from './inputs.ts';

/** pt. */
const TYPE = { size: 9, script: 8 } as const;
const LEAD = mm(3.7);
const PAD = mm(0.45);
const LETTER = mm(9);
/** As `shareWidth` reckons it. */
const COLUMN_GAP = mm(3);

/** Rows of `width` pt, closer than the tables of a card: they are read at a desk. */
export function inputsTable(setting: Setting, plan: JointPlan, width: number): Table {
  const widths = shareWidth(width, [{ fixed: LETTER }, { fixed: mm(41) }, { fixed: mm(50) }, { share: 1 }]);
  const small = setting.format.type.least + 0.5;
  const head = ['', 'Input', 'Value', 'From'].map((text): readonly Span[] => [span(text, small, 'semibold', 'soft')]);
  return {
    head: tableRow(setting, undefined, head, widths, 'TH'),
    rows: jointInputs(plan).map((input) =>
      tableRow(
        setting,
        input.symbol,
        [
          [],
          [span(capitalised(input.name), TYPE.size)],
          [span(input.value, TYPE.size, 'semibold')],
          [span(input.origin, small, 'regular', 'soft')],
        ],
        widths,
        'TD',
      ),
    ),
  };
}

/** One row; the cells begin on one line, with the letter on its baseline. */
function tableRow(
  setting: Setting,
  symbol: JointInput['symbol'],
  cells: readonly (readonly Span[])[],
  widths: readonly number[],
  tag: 'TH' | 'TD',
): Block {
  const blocks = cells.map((spans, i) => paragraph(setting, spans, widths[i] ?? 0, { lead: LEAD }));
  const height = Math.max(LEAD, ...blocks.map((b) => b.height)) + 2 * PAD;
  let x = 0;
  const nodes = blocks.map((block, i) => {
    const left = x;
    x += (widths[i] ?? 0) + COLUMN_GAP;
    const items: Content[] = block.nodes
      .flatMap((n) => n.items)
      .map((item) => ({ ...item, x: item.x + left, y: item.y + PAD }));
    if (i === 0 && symbol !== undefined) {
      items.push(...movedBox(formulaBox(setting, symbolMark(symbol), TYPE), 0, PAD + baseline(LEAD, TYPE.size)).texts);
    }
    return node(tag, items, [], tag === 'TH' ? { scope: 'Column' } : {});
  });
  const rule = tag === 'TH' ? ({ ink: 'rule', width: 0.75 } as const) : ({ ink: 'hairline', width: 0.4 } as const);
  return {
    height,
    decoration: [{ kind: 'line', x1: 0, y1: height, x2: x - COLUMN_GAP, y2: height, ...rule }],
    nodes: [node('TR', [], nodes)],
  };
}
