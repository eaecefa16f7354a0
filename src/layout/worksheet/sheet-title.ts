/** The head of a worksheet: joint, variant, torque, and what the sheet is and is not. */

import { correctionText, isCorrected } from '../../resolve/joint-words.ts';
import type { JointPlan, Machine } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { formatQuantity } from '../../units/index.ts';
import { type Block, EMPTY, mm, overlay, shift, stack } from '../card/items.ts';
import { line, paragraph, type Setting, span, widthOfSpans } from '../card/setting.ts';
import type { Span } from '../type/index.ts';

/** Name, variant and the torque itself, which is the hero of the sheet; then what the sheet is and is not. */
export function titleBlock(setting: Setting, { plan, variants }: Machine['joints'][number], width: number): Block {
  const { type } = setting.format;
  const facts = `${plan.count}\u00a0×\u00a0${plan.thread.designation}, ${plan.grade.id}`;
  const torque = [
    span(formatQuantity(plan.target), type.value, 'bold'),
    span(` (${formatQuantity(plan.targetSecond)})`, 12),
  ];
  const tag = variants === '' ? EMPTY : variantTag(setting, variants, width * 0.4);
  return stack(
    [
      overlay(
        paragraph(setting, [span(capitalised(plan.name), type.doc, 'bold')], width * 0.58, {
          tag: 'H1',
          lead: mm(8.5),
        }),
        shift(tag, width - widthOfTag(setting, variants, width * 0.4), mm(0.8)),
      ),
      overlay(
        line(setting, torque, width, { lead: mm(8) }),
        line(setting, [span(facts, 12, 'semibold')], width, { align: 'right', lead: mm(8) }),
      ),
      isCorrected(plan) ? paragraph(setting, settingSpans(plan, type.table), width) : EMPTY,
      paragraph(
        setting,
        [
          span('A check, computed by the shop. ', type.small, 'bold'),
          span("The maker's manual governs. Lengths in mm, forces in kN, torques in N·m, stresses in MPa.", type.small),
        ],
        width,
      ),
    ],
    mm(0.6),
  );
}

/** What the wrench is set to, where that is not the torque above. */
function settingSpans(plan: JointPlan, size: number): readonly Span[] {
  const set = `${formatQuantity(plan.setting)} (${formatQuantity(plan.settingSecond)})`;
  return [span(`Wrench set to ${set}: `, size, 'bold'), span(`${correctionText(plan)}.`, size)];
}

function variantTag(setting: Setting, label: string, most: number): Block {
  const text = paragraph(setting, [span(label, 12, 'bold')], most, { lead: mm(5.4) });
  const box = { width: widthOfTag(setting, label, most), height: text.height + mm(1.6) };
  return {
    height: box.height,
    decoration: [{ kind: 'rect', x: 0, y: 0, ...box, stroke: 'ink', lineWidth: 1.2 }],
    nodes: shift(text, mm(2), mm(0.8)).nodes,
  };
}

function widthOfTag(setting: Setting, label: string, most: number): number {
  return label === '' ? 0 : Math.min(most, widthOfSpans(setting, [span(label, 12, 'bold')])) + mm(4);
}
