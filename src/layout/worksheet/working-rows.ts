/** The working of a joint as rows: what is reckoned, the formula, the same with its numbers, the result. */

import {
  figures,
  type Mode,
  marksOf,
  printExpr,
  printSymbol,
  row,
  symbolMark,
  word,
} from '../../torque/formula/index.ts';
import type { WorkingLine } from '../../torque/working.ts';
import { type Block, mm, type Node, node, type TextItem } from '../card/items.ts';
import { baseline, lineItems, paragraph, type Setting, span } from '../card/setting.ts';
import { oneLine } from '../type/index.ts';
import { beside, type FormulaBox, type FormulaType, formulaBox, movedBox } from './formula-box.ts';

const FORMULA_TYPE: FormulaType = { size: 9.5, script: 8 };

/** Columns in pt from the left edge: names, letters, numbers. */
const LETTERS = mm(41);
const NUMBERS = mm(86);
/** The numbers of the results end here, pt from the right edge; their units follow. */
const UNITS = mm(9.5);
const RESULT = mm(21);
const GAP = mm(1.5);
const PAD = mm(0.45);
const NAME_LEAD = mm(3.5);
/** Between two lines of one formula. */
const LINE_GAP = mm(1);

/** One table row as a block of `width` pt. */
export function workingRow(setting: Setting, working: WorkingLine, width: number): Block {
  const lines = formulaLines(setting, working, width);
  let y = PAD;
  const baselines: number[] = [];
  for (const l of lines) {
    y += (baselines.length === 0 ? 0 : LINE_GAP) + l.ascent;
    baselines.push(y);
    y += l.descent;
  }
  const small = setting.format.type.least + 0.5;
  const name = paragraph(setting, [span(working.name, small, 'regular', 'soft')], LETTERS - GAP, { lead: NAME_LEAD });
  const nameLines = Math.round(name.height / NAME_LEAD);
  const height = Math.max(y + PAD, nameLines === 1 ? 0 : name.height + 2 * PAD);
  const drop = (height - y - PAD) / 2;
  const [first = 0] = baselines;
  const last = (baselines.at(-1) ?? 0) + drop;
  // One line stands on the baseline of the formula; more lines stand about it.
  const nameTop = first + drop - baseline(NAME_LEAD, small) - ((nameLines - 1) * NAME_LEAD) / 2;
  const result = resultItems(setting, working, width, last);
  const placed = lines.map((l, i) => movedBox(l, LETTERS, (baselines[i] ?? 0) + drop));
  const formula: Node = node(
    'TD',
    [],
    [
      node(
        'Formula',
        placed.flatMap((box) => box.texts),
        [],
        { alt: plainText(working) },
      ),
    ],
  );
  return {
    height,
    decoration: placed.flatMap((box) => box.rules),
    nodes: [node('TR', [], [asCell(name, 'TH', 0, nameTop), formula, node('TD', result)])],
  };
}

/** Number and unit in bold, the unit left aligned behind the number, so that numbers stand under each other. */
function resultItems(setting: Setting, working: WorkingLine, width: number, y: number): TextItem[] {
  const bold = (text: string) => oneLine(setting.faces, [span(text, FORMULA_TYPE.size, 'bold')], setting.problems);
  const number = bold(figures(working.value));
  const items = lineItems(number, width - UNITS - number.width, y);
  return working.unit === '' ? items : [...items, ...lineItems(bold(working.unit), width - UNITS + mm(1), y)];
}

/** What a screen reader says of the formula. */
export function plainText(working: WorkingLine): string {
  return `${printSymbol(working.symbol)} = ${working.text.formula} = ${working.text.withNumbers}`;
}

/** Letters and numbers on one line where they fit before the result, else under each other. */
function formulaLines(setting: Setting, working: WorkingLine, width: number): FormulaBox[] {
  const letters = side(setting, working, 'letters');
  if (printExpr(working.formula, 'letters') === working.text.withNumbers) return [letters];
  const numbers = side(setting, working, 'numbers');
  const room = width - LETTERS - RESULT - GAP;
  const at = Math.max(NUMBERS - LETTERS, letters.width + mm(1));
  if (at + numbers.width <= room) return [beside([{ ...letters, width: at }, numbers])];
  return [letters, numbers];
}

function side(setting: Setting, working: WorkingLine, mode: Mode): FormulaBox {
  const right = marksOf(working.formula, mode, true);
  const equals = word('=', 'sign');
  return formulaBox(
    setting,
    mode === 'letters' ? row(symbolMark(working.symbol), equals, right) : row(equals, right),
    FORMULA_TYPE,
  );
}

/** The words of a block as one cell of a row. */
function asCell(block: Block, tag: 'TH' | 'TD', dx: number, dy: number): Node {
  const items = block.nodes.flatMap((n) => n.items).map((item) => ({ ...item, x: item.x + dx, y: item.y + dy }));
  return node(tag, items, [], tag === 'TH' ? { scope: 'Row' } : {});
}
