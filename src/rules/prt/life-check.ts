/** A check that prints one kind of fault in the life of a part. */

import { keyPlaceOf, type Part, type Step } from '../../resolve/index.ts';
import type { Fault, Run } from '../check.ts';
import { eachVariant, type Scene } from '../rule.ts';
import type { Move } from './ledger.ts';
import { type LifeFault, type LifeFaultKind, lifeFaults } from './life-faults.ts';

export const CONSERVATION =
  'common practice: parts are reconciled, count in equals count out, left over or short stops the job';

export function eachLifeFault(kind: LifeFaultKind, say: (fault: LifeFault, scene: Scene) => Fault): Run {
  return eachVariant(function* (scene) {
    for (const fault of lifeFaults(scene)) if (fault.kind === kind) yield labelled(fault.move.step, say(fault, scene));
  });
}

/** Faults of a shared stage say which procedure uses it. */
export function labelled(step: Step, fault: Fault): Fault {
  return step.label === undefined ? fault : { label: step.label, ...fault };
}

/** Where the part stands in the list of the step. */
export function placeOfMove({ kind, step, move }: Pick<Move, 'kind' | 'step' | 'move'>): Fault['range'] {
  return keyPlaceOf(step, kind === 'off' ? 'remove' : 'fit', move.id);
}

/** The part in the machine's file. */
export function listedPart(part: Part): NonNullable<Fault['related']>[number] {
  return { range: part.keyRange, message: 'the part in the parts list' };
}
