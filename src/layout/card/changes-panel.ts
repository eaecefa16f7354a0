/** What changed since the issue before, and why: near the top of the first side. */

import type { ChangePanel } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { BAR_WIDTH } from './change-bars.ts';
import { type Arrangement, chooseLowest } from './choose.ts';
import { isWide } from './format.ts';
import { type Block, mm, node, overlay, shift, stack } from './items.ts';
import { paragraph, type Setting, span } from './setting.ts';
import { sentence } from './source-text.ts';

export const MOST_LINES = 5;
/** Between the bar at its left and its words. */
export const PANEL_INDENT = mm(4);
/** Two columns are worth their shorter lines only where they make the panel this much lower. */
export const PANEL_LIKENESS = mm(3);
const COLUMN_GAP = mm(6);
export const PANEL_BULLET = mm(3.5);

/** Its bar is the one that stands in the margin beside each changed part, and says so. */
export function changesBlock(setting: Setting, panel: ChangePanel, why: string, width: number): Block {
  const { type } = setting.format;
  const inner = width - PANEL_INDENT;
  const head = paragraph(
    setting,
    [
      span(`Changed since Rev\u00a0${panel.since}`, type.step, 'bold'),
      span(` · ${PANEL_LEGEND}`, type.small, 'regular', 'soft'),
    ],
    inner,
    { tag: 'H2' },
  );
  const reason = paragraph(
    setting,
    [span('Why: ', type.small, 'semibold', 'soft'), span(sentence(why), type.table)],
    inner,
  );
  const words = stack([head, linesBlock(setting, panel, inner), reason], mm(0.8));
  const placed = shift(words, PANEL_INDENT, mm(0.5));
  const height = words.height + mm(1);
  return {
    height,
    decoration: [{ kind: 'rect', x: 0, y: 0, width: BAR_WIDTH, height, fill: 'ink' }],
    nodes: [node('Div', [], placed.nodes)],
  };
}

export const PANEL_LEGEND = 'a bar in the outer margin marks each changed part';

/** The lines of the panel, what they leave out counted in a last one. */
export function panelLines({ lines, more }: ChangePanel): readonly string[] {
  const shown = lines.slice(0, MOST_LINES).map((text) => joinNumbers(capitalised(text)));
  const rest = more + Math.max(0, lines.length - MOST_LINES);
  if (shown.length === 0 && rest === 0) return ['No step, number or list differs'];
  return rest === 0 ? shown : [...shown, `And ${rest} more`];
}

/** A number stays with the word behind it, which mostly is its unit. */
function joinNumbers(text: string): string {
  return text.replace(/(\d) (?=\p{L})/gu, '$1\u00a0');
}

function linesBlock(setting: Setting, panel: ChangePanel, width: number): Block {
  const lines = panelLines(panel);
  const inColumns = (count: number): Arrangement => {
    const own = (width - COLUMN_GAP * (count - 1)) / count;
    const rows = Math.ceil(lines.length / count);
    return (trial) => {
      const columns = Array.from({ length: count }, (_, i) =>
        shift(
          stack(lines.slice(i * rows, (i + 1) * rows).map((text) => item(trial, text, own))),
          i * (own + COLUMN_GAP),
          0,
        ),
      );
      const all = overlay(...columns);
      return { ...all, nodes: [node('L', [], all.nodes)] };
    };
  };
  const counts = isWide(setting.format) && lines.length > 2 ? [1, 2] : [1];
  return chooseLowest(setting, counts.map(inColumns), PANEL_LIKENESS);
}

function item(setting: Setting, text: string, width: number): Block {
  const size = setting.format.type.table;
  const bullet = paragraph(setting, [span('•', size, 'bold')], PANEL_BULLET, { tag: 'Lbl' });
  const body = shift(paragraph(setting, [span(text, size)], width - PANEL_BULLET, { tag: 'LBody' }), PANEL_BULLET, 0);
  const both = overlay(bullet, body);
  return { ...both, nodes: [node('LI', [], both.nodes)] };
}
