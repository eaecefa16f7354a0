/** One step with everything that belongs to it: warnings above, number and tick box in the gutter, blocks below. Never parted. */

import type { JointPlan, Step } from '../../resolve/types.ts';
import { chooseLowest } from './choose.ts';
import { type FactNames, factsColumn, factsGrid } from './facts.ts';
import { columnsWidth, isWide, leading, textWidthOf } from './format.ts';
import { type Block, barred, mm, node, overlay, shift, stack } from './items.ts';
import { changesOf, hasLostPart } from './marks.ts';
import { measureBlock } from './measure-block.ts';
import { setProse } from './prose.ts';
import { line, type Setting, span } from './setting.ts';
import { holdBlock, recordsBlock, waitBlock, witnessBlock } from './strips.ts';
import { temporaryBlock } from './temporary.ts';
import { loosenFigure, loosenWords, torqueBlock } from './torque-block.ts';
import { warningBlock } from './warning.ts';

export interface StepScene {
  readonly joint: (id: string) => JointPlan | undefined;
  readonly tool: (id: string) => string;
  /** Name of a person by id. */
  readonly person: (id: string) => string;
}

/** Side of the tick box: 5 mm takes a grease pencil. */
const TICK = mm(5);
/** Longer lines are hard to follow back to their start. */
const LONGEST_LINE = mm(124);
/** Least width of the words beside a figure. */
const LEAST_WORDS = mm(50);
const WORDS_GAP = mm(1.2);

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
  const changed = changesOf(step);
  const upper = upperBlock(setting, step, scene, shownElsewhere, loosened, tightened === undefined);
  const blocks: Block[] = [
    upper,
    ...(tightened === undefined ? [] : [barred(torqueBlock(setting, tightened, column), changed('joint'))]),
    // A reading is taken when the wait is over.
    ...(step.wait === undefined ? [] : [barred(waitBlock(setting, step.wait, column), changed('wait'))]),
    ...step.measures.map((m) => barred(measureBlock(setting, m, column), changed('measures'))),
    ...(step.records.length === 0 ? [] : [barred(recordsBlock(setting, step.records, column), changed('records'))]),
    ...(step.witness === undefined ? [] : [barred(witnessBlock(setting, step.witness, column), changed('points'))]),
    ...(step.hold === undefined ? [] : [barred(holdBlock(setting, step.hold, column), changed('points'))]),
  ];
  const body = shift(stack(blocks, mm(2.5)), format.gutter, 0);
  const temporary = (step.temporary ?? []).map((t) => temporaryBlock(setting, t, scene.person, width));
  const warnings = step.warnings.map((w) => barred(warningBlock(setting, w, width), changed('warnings')));
  // What a step has lost, or does not print, stands nowhere: its bar is beside the number.
  const unseen =
    hasLostPart(step) || ((step.marks ?? []).length > 0 && [body, ...warnings].every((b) => b.bars === undefined));
  const own = overlay(gutterBlock(setting, step.number, unseen), body);
  const all = stack([...temporary, ...warnings, own], mm(2));
  return { ...all, nodes: [node('Div', [], all.nodes)] };
}

/**
 * Text, note and what the step takes. A short list stands in the last column beside the words; a longer one below them, over all
 * columns, when that is lower. The figure of a joint that comes apart stands at the right where it fits.
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
  const changed = changesOf(step);
  const names: FactNames = { tool: scene.tool, shownElsewhere };
  const words = (s: Setting, width: number): Block => wordsBlock(s, step, loosened, Math.min(width, LONGEST_LINE));
  const figure = loosened !== undefined && drawn ? loosenFigure(loosened, column) : undefined;
  if (figure === undefined) return wordsWithFacts(setting, words, step, names);
  const rest = column - figure.width - format.columnGap;
  const drawing = barred(figure.block, changed('joint'));
  return chooseLowest(setting, [
    ...(rest < LEAST_WORDS
      ? []
      : [
          (s: Setting) =>
            overlay(
              stack([words(s, rest), factsColumn(s, step, names, rest)], WORDS_GAP),
              shift(drawing, column - figure.width, 0),
            ),
        ]),
    (s) => stack([wordsWithFacts(s, words, step, names), shift(drawing, (column - figure.width) / 2, 0)], mm(2)),
  ]);
}

function wordsWithFacts(
  setting: Setting,
  words: (setting: Setting, width: number) => Block,
  step: Step,
  names: FactNames,
): Block {
  const { format } = setting;
  const column = textWidthOf(format) - format.gutter;
  const below = (s: Setting): Block => stack([words(s, column), factsGrid(s, step, names)], WORDS_GAP);
  if (!isWide(format)) return below(setting);
  const own = columnsWidth(format);
  const beside = (s: Setting): Block => {
    const facts = factsColumn(s, step, names, own);
    const text = words(s, facts.height === 0 ? column : column - own - format.columnGap);
    return overlay(text, shift(facts, column - own, 0));
  };
  return chooseLowest(setting, [beside, below], mm(2));
}

/** What is to be done, the note, and what is loosened. */
function wordsBlock(setting: Setting, step: Step, loosened: JointPlan | undefined, width: number): Block {
  const { type } = setting.format;
  const changed = changesOf(step);
  const blocks = [barred(setProse(setting, step.text, type.step, width), changed('text'))];
  if (step.note !== undefined) {
    const lead = [span('Note: ', type.table, 'semibold')];
    blocks.push(barred(setProse(setting, step.note, type.table, width, { lead }), changed('note')));
  }
  if (loosened !== undefined) blocks.push(barred(loosenWords(setting, loosened, width), changed('joint')));
  return stack(blocks, WORDS_GAP);
}

/** Number in bold, on the line of the text's first line, and the tick box under it. changed: the line of the number has a bar. */
function gutterBlock(setting: Setting, number: number, changed: boolean): Block {
  const { format } = setting;
  const lead = leading(format.type.step);
  const label = line(setting, [span(String(number), format.type.title, 'bold')], format.gutter - mm(1), { lead });
  return {
    height: lead + mm(1) + TICK,
    decoration: [{ kind: 'rect', x: 0, y: lead + mm(0.8), width: TICK, height: TICK, stroke: 'ink', lineWidth: 0.9 }],
    nodes: label.nodes,
    ...(changed ? { bars: [{ y: 0, height: lead }] } : {}),
  };
}
