/** Bands across a step: hold and witness points, waiting, further things to write down. */

import type { Step } from '../../resolve/types.ts';
import { formatQuantity } from '../../units/index.ts';
import { lineBlank, lineBlanks } from './blanks.ts';
import { type Block, type CardInk, type Decoration, mm, node, overlay, shift, stack } from './items.ts';
import { line, paragraph, type Setting, span, widthOfSpans } from './setting.ts';

export function holdBlock(setting: Setting, by: string, width: number): Block {
  const { type } = setting.format;
  const textWidth = width - mm(42);
  const words = stack(
    [
      paragraph(
        setting,
        [span('Work stops here until it is released. By: ', type.step), span(by, type.step, 'bold')],
        textWidth,
      ),
      lineBlanks(
        setting,
        [
          { label: 'Released, name', share: 3 },
          { label: 'Date', share: 2 },
        ],
        textWidth,
      ),
    ],
    0,
  );
  return banded(setting, 'HOLD POINT', 'ink', words, width, 1.5);
}

export function witnessBlock(setting: Setting, who: string, width: number): Block {
  const { type } = setting.format;
  const words = paragraph(
    setting,
    [
      span('Told before this step: ', type.step),
      span(who, type.step, 'bold'),
      span('. Work may go on if nobody comes.', type.step),
    ],
    width - mm(42),
  );
  return banded(setting, 'WITNESS POINT', 'outlined', words, width, 0.75);
}

export function waitBlock(setting: Setting, wait: NonNullable<Step['wait']>, width: number): Block {
  const { type } = setting.format;
  const textWidth = width - mm(42);
  const words = stack(
    [
      paragraph(setting, [span(capital(wait.why), type.step)], textWidth),
      lineBlanks(
        setting,
        [
          { label: 'Started at', share: 1 },
          { label: 'Ready at', share: 1 },
        ],
        Math.min(textWidth, mm(84)),
      ),
    ],
    0,
  );
  return banded(setting, `WAIT ${formatQuantity(wait.time)}`.replace(' ', '\u00a0'), 'outlined', words, width, 0.75);
}

export function recordsBlock(setting: Setting, labels: readonly string[], width: number): Block {
  return stack(
    labels.map((label) => lineBlank(setting, capital(label), Math.min(width, mm(110)))),
    0,
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A boxed band with its word in a field at the left. */
function banded(
  setting: Setting,
  word: string,
  field: 'ink' | 'outlined',
  words: Block,
  width: number,
  lineWidth: number,
): Block {
  const fieldWidth = mm(36);
  const size = widthOfSpans(setting, [span(word, 13, 'bold')]) > fieldWidth - mm(3) ? 11 : 13;
  const height = Math.max(words.height + mm(3.4), mm(9.5));
  const label = line(setting, [span(word, size, 'bold', field === 'ink' ? 'paper' : 'ink')], fieldWidth, {
    align: 'center',
    lead: mm(6),
  });
  const fill: { fill?: CardInk } = field === 'ink' ? { fill: 'ink' } : { fill: 'tint' };
  const decoration: Decoration[] = [
    { kind: 'rect', x: 0, y: 0, width: fieldWidth, height, ...fill },
    { kind: 'rect', x: 0, y: 0, width, height, stroke: 'ink', lineWidth },
  ];
  const content = overlay(
    shift(label, 0, (height - mm(6)) / 2),
    shift(words, fieldWidth + mm(3), (height - words.height) / 2),
  );
  return { height, decoration: [...decoration, ...content.decoration], nodes: [node('Div', [], content.nodes)] };
}
