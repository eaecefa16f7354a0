/** One variant of both issues compared: findings, and the marks of its steps. */

import type { Step, StepMark, Variant } from '../../resolve/types.ts';
import { compareJoints } from './joints.ts';
import { type MatchedPair, matchSteps } from './match-steps.ts';
import { cut, proseText } from './phrases.ts';
import { renamings, sceneOf } from './scene.ts';
import { compareHead, compareStages } from './stages.ts';
import { compareStep, marksOfNew, meansSameSteps } from './step.ts';
import type { Finding } from './types.ts';

export type Marks = Map<number, Set<StepMark>>;

/** marks: filled while the findings are asked for. */
export function* compareVariant(older: Variant, newer: Variant, marks: Marks): Generator<Finding> {
  const mark = (step: number, part: StepMark): void => {
    const known = marks.get(step) ?? new Set();
    marks.set(step, known.add(part));
  };
  const match = matchSteps(stepsOf(older), stepsOf(newer));
  const scene = sceneOf(older, newer, match);
  yield* compareHead(scene);
  yield* renamings(scene);
  yield* compareJoints(scene, mark);
  const stages = compareStages(scene, match);
  yield* stages.findings;
  for (const step of match.removed) {
    const before = proseText(step.text);
    yield {
      kind: 'removed',
      of: 'step',
      form: 'removed',
      say: cut(before),
      before,
      stepsBefore: [step.number],
      stepsAfter: [],
    };
  }
  for (const step of match.added) {
    const after = proseText(step.text);
    for (const part of marksOfNew(step)) mark(step.number, part);
    yield {
      kind: 'added',
      of: 'step',
      form: 'new',
      say: cut(after),
      after,
      stepsBefore: [],
      stepsAfter: [step.number],
    };
  }
  for (const pair of match.pairs) {
    if (pair.moved && !stages.movedWithStage(pair.older, pair.newer)) yield movedStep(pair);
    // Names of tools stand in no step, so that a renamed one is looked for in every step that has one.
    if (pair.alike && scene.renamed.length === 0 && meansSameSteps(pair, scene.nowAt)) continue;
    const { told, marks: parts } = compareStep(scene, pair);
    for (const part of parts) mark(pair.newer.number, part);
    for (const t of told) {
      yield { ...t, form: 'at', stepsBefore: [pair.older.number], stepsAfter: [pair.newer.number] };
    }
  }
}

function stepsOf(variant: Variant): readonly Step[] {
  return variant.stages.flatMap((s) => s.steps);
}

function movedStep({ older, newer }: MatchedPair): Finding {
  const after = proseText(newer.text);
  return {
    ...{ kind: 'moved', of: 'step', form: 'moved', say: cut(after), before: proseText(older.text), after },
    stepsBefore: [older.number],
    stepsAfter: [newer.number],
  };
}
