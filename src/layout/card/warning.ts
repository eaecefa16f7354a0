/** A warning: full width above its step; sign, signal word, what happens and how to avoid it. */

import type { Signal, Warning } from '../../resolve/types.ts';
import { safetySign } from '../drawing/index.ts';
import type { TextInk } from '../type/index.ts';
import { type Block, type CardInk, type Decoration, mm, node, overlay, shift, stack } from './items.ts';
import { setProse } from './prose.ts';
import { line, type Setting, span } from './setting.ts';

interface Style {
  readonly word: string;
  readonly panel: CardInk;
  readonly tint: CardInk;
  readonly wordInk: TextInk;
}

/** Colours after ISO 3864 and the common signal words; the word carries the meaning on a grey copy. */
const STYLES: Readonly<Record<Signal, Style>> = {
  danger: { word: 'DANGER', panel: 'signal-danger', tint: 'tint-danger', wordInk: 'paper' },
  warning: { word: 'WARNING', panel: 'signal-warning', tint: 'tint-warning', wordInk: 'ink' },
  caution: { word: 'CAUTION', panel: 'signal-caution', tint: 'tint-caution', wordInk: 'ink' },
  notice: { word: 'NOTICE', panel: 'signal-notice', tint: 'tint-notice', wordInk: 'paper' },
};

const SIGN_MM = 10.5;

export function warningBlock(setting: Setting, warning: Warning, width: number): Block {
  const style = STYLES[warning.level];
  const { format } = setting;
  const sign = safetySign(warning.level, SIGN_MM);
  const pad = mm(2);
  const wordSize = 13;
  const panelWidth = mm(27);
  const signColumn = mm(SIGN_MM) + 2 * pad;
  const narrow = width < mm(140);
  const panelHeight = mm(6.5);
  const textX = narrow ? signColumn : signColumn + panelWidth + mm(3);
  const textWidth = width - textX - pad;
  const hazard = setProse(setting, warning.hazard, format.type.step, textWidth, { weight: 'semibold' });
  const avoid = setProse(setting, warning.avoid, format.type.step, textWidth);
  const word = line(setting, [span(style.word, wordSize, 'bold', style.wordInk)], panelWidth, {
    align: 'center',
    lead: panelHeight,
  });
  const panelTop = narrow ? mm(1.6) : mm(2.2);
  const textTop = narrow ? panelTop + panelHeight + mm(1.2) : mm(2);
  const text = shift(stack([hazard, avoid], mm(0.6)), textX, textTop);
  const height = Math.max(text.height + textTop + mm(1.8), mm(sign.height) + 2 * mm(1.8));
  const panelX = narrow ? signColumn : signColumn;
  const decoration: Decoration[] = [
    { kind: 'rect', x: 0, y: 0, width, height, fill: style.tint },
    { kind: 'line', x1: 0, y1: 0, x2: width, y2: 0, width: 1, ink: 'ink' },
    { kind: 'line', x1: 0, y1: height, x2: width, y2: height, width: 1, ink: 'ink' },
    { kind: 'drawing', x: pad, y: mm(1.8), drawing: sign },
    {
      kind: 'rect',
      x: panelX,
      y: panelTop,
      width: panelWidth,
      height: panelHeight,
      fill: style.panel,
      stroke: 'ink',
      lineWidth: 0.5,
    },
  ];
  const words = overlay(shift(word, panelX, panelTop), text);
  return { height, decoration, nodes: [node('Div', [], words.nodes)] };
}
