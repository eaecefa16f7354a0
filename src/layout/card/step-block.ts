/** One step with everything that belongs to it: warnings above, number and tick box in the gutter, blocks below. Never parted. */

import type { JointPlan, Step } from '../../resolve/types.ts';
import { factsBlock } from './facts.ts';
import { leading, textWidthOf } from './format.ts';
import { type Block, mm, node, overlay, shift, stack } from './items.ts';
import { measureBlock } from './measure-block.ts';
import { setProse } from './prose.ts';
import { line, type Setting, span } from './setting.ts';
import { holdBlock, recordsBlock, waitBlock, witnessBlock } from './strips.ts';
import { loosenFigure, loosenWords, torqueBlock } from './torque-block.ts';
import { warningBlock } from './warning.ts';

export interface StepScene {
  readonly joint: (id: string) => JointPlan | undefined;
  readonly tool: (id: string) => string;
}

/** Side of the tick box: 5 mm takes a grease pencil. */
const TICK = mm(5);

export function stepBlock(setting: Setting, step: Step, scene: StepScene): Block {
  const { format } = setting;
  const width = textWidthOf(format);
  const column = width - format.gutter;
  const tightened = step.tighten === undefined ? undefined : scene.joint(step.tighten);
  const loosened = step.loosen === undefined ? undefined : scene.joint(step.loosen);
  // What the sentence names need not be said again beside it.
  const named = step.text.flatMap((p) => p.runs.flatMap((run) => (run.ref === undefined ? [] : [run.ref.id])));
  const shownElsewhere = new Set([
    ...named,
    ...step.measures.map((m) => m.tool),
    ...[tightened?.wrench, tightened?.socket, tightened?.lubricant, loosened?.socket].filter((id) => id !== undefined),
  ]);
  const upper = upperBlock(setting, step, scene, shownElsewhere, loosened, tightened === undefined);
  const blocks: Block[] = [
    upper,
    ...(tightened === undefined ? [] : [torqueBlock(setting, tightened, column)]),
    ...step.measures.map((m) => measureBlock(setting, m, column)),
    ...(step.records.length === 0 ? [] : [recordsBlock(setting, step.records, column)]),
    ...(step.wait === undefined ? [] : [waitBlock(setting, step.wait, column)]),
    ...(step.witness === undefined ? [] : [witnessBlock(setting, step.witness, column)]),
    ...(step.hold === undefined ? [] : [holdBlock(setting, step.hold, column)]),
  ];
  const body = shift(stack(blocks, mm(2.5)), format.gutter, 0);
  const gutter = gutterBlock(setting, step.number);
  const warnings = step.warnings.map((w) => warningBlock(setting, w, width));
  const own = overlay(gutter, body);
  const all = stack([...warnings, own], mm(2));
  return { ...all, nodes: [node('Div', [], all.nodes)] };
}

/**
 * Text, note and what the step takes. On wide cards the figure of a joint that comes apart stands at the right; else, if anything
 * is taken, a column of its own does.
 */
function upperBlock(
  setting: Setting,
  step: Step,
  scene: StepScene,
  shownElsewhere: ReadonlySet<string>,
  loosened: JointPlan | undefined,
  drawn: boolean,
): Block {
  const { format } = setting;
  const column = textWidthOf(format) - format.gutter;
  const wide = format.side > 0;
  const figure = loosened !== undefined && drawn ? loosenFigure(loosened, column) : undefined;
  const figureBeside = wide && figure !== undefined && column - figure.width - format.sideGap >= mm(60);
  const taken = (width: number): Block | undefined =>
    factsBlock(setting, step, { tool: scene.tool, shownElsewhere }, width);
  const aside = wide && !figureBeside ? taken(format.side) : undefined;
  const width = figureBeside
    ? column - figure.width - format.sideGap
    : aside !== undefined
      ? column - format.side - format.sideGap
      : column;
  const lineWidth = Math.min(width, mm(124));
  const words: Block[] = [setProse(setting, step.text, format.type.step, lineWidth)];
  if (step.note !== undefined) {
    words.push(
      setProse(setting, step.note, format.type.table, lineWidth, {
        lead: [span('Note: ', format.type.table, 'semibold')],
      }),
    );
  }
  if (loosened !== undefined) words.push(loosenWords(setting, loosened, lineWidth));
  const below = aside === undefined ? taken(width) : undefined;
  if (below !== undefined) words.push(below);
  const text = stack(words, mm(1.2));
  if (figureBeside) return overlay(text, shift(figure.block, column - figure.width, 0));
  const upper = aside === undefined ? text : overlay(text, shift(aside, column - format.side, 0));
  return figure === undefined ? upper : stack([upper, shift(figure.block, (column - figure.width) / 2, 0)], mm(2));
}

/** Number in bold, on the line of the text's first line, and the tick box under it. */
function gutterBlock(setting: Setting, number: number): Block {
  const { format } = setting;
  const lead = leading(format.type.step);
  const label = line(setting, [span(String(number), format.type.title, 'bold')], format.gutter - mm(1), { lead });
  return {
    height: lead + mm(1) + TICK,
    decoration: [{ kind: 'rect', x: 0, y: lead + mm(0.8), width: TICK, height: TICK, stroke: 'ink', lineWidth: 0.9 }],
    nodes: label.nodes,
  };
}
