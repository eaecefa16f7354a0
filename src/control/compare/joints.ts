/** The joints of one variant: each is told once, and marked at the steps that tighten or loosen it. */

import type { JointPlan, StepMark, Variant } from '../../resolve/types.ts';
import { ASPECTS } from './joint-aspects.ts';
import { paired } from './pairing.ts';
import { exchange, valueChange } from './phrases.ts';
import type { Finding, Scene, Subject, ThingKind, Told } from './types.ts';

/** Names that are printed with it: one that changed is told for the thing itself. */
const NAMES = ['name', 'fastenerName', 'lubricantName', 'wrenchName', 'socketName'] as const;
const LOOSENING_NAMES = ['name', 'fastenerName', 'socketName'] as const;

interface Place {
  readonly tightens: readonly number[];
  readonly loosens: readonly number[];
}

/** mark: called for each step of the newer issue in which something of a joint differs. */
export function compareJoints(scene: Scene, mark: (step: number, part: StepMark) => void): readonly Finding[] {
  const { both } = paired(scene.older.joints, scene.newer.joints, (j) => j.id);
  return both.flatMap(([before, after]): readonly Finding[] => {
    const told = [
      ...ASPECTS.flatMap(({ compare, loosening }) => compare(before, after).map((t) => ({ ...t, loosening }))),
      ...compareThings(scene, before, after),
    ];
    const was = placeOf(scene.older, before.id);
    const is = placeOf(scene.newer, after.id);
    const tightened = is.tightens.length > 0;
    const shown = told.length > 0 || NAMES.some((name) => before[name] !== after[name]);
    if (shown) for (const step of is.tightens) mark(step, 'joint');
    const loosened = told.some((t) => t.loosening) || LOOSENING_NAMES.some((name) => before[name] !== after[name]);
    if (loosened) for (const step of is.loosens) mark(step, 'joint');
    return told.map(({ loosening: _, ...t }) => ({
      ...t,
      form: 'at' as const,
      // A change is said where it is tightened: there it is carried out.
      stepsBefore: tightened && was.tightens.length > 0 ? was.tightens : was.loosens,
      stepsAfter: tightened ? is.tightens : is.loosens,
    }));
  });
}

function placeOf(variant: Variant, id: string): Place {
  const steps = variant.stages.flatMap((s) => s.steps);
  const numbers = (act: 'tighten' | 'loosen'): readonly number[] =>
    steps.filter((s) => s[act] === id).map((s) => s.number);
  return { tightens: numbers('tighten'), loosens: numbers('loosen') };
}

type ToldOfJoint = Told & { readonly loosening: boolean };

/** What of the joint stands in a register: tools, lubricant, gasket, fasteners. */
function compareThings(scene: Scene, before: JointPlan, after: JointPlan): readonly ToldOfJoint[] {
  const thing = (
    of: Subject & ThingKind,
    name: string,
    a: string | undefined,
    b: string | undefined,
    loosening = false,
  ): readonly ToldOfJoint[] => {
    if (a === b) return [];
    const old = a === undefined ? undefined : { id: a, name: scene.olderName(of, a) };
    const now = b === undefined ? undefined : { id: b, name: scene.newerName(of, b) };
    const told =
      old !== undefined && now !== undefined
        ? [exchange(of, old, now)]
        : valueChange(of, `${name} of the ${after.name}`, old?.name ?? '', now?.name ?? '');
    return told.map((t) => ({ ...t, loosening }));
  };
  const also = paired(before.also, after.also, (id) => id);
  return [
    ...thing('tool', 'wrench', before.wrench, after.wrench),
    ...thing('tool', 'socket', before.socket, after.socket, true),
    ...thing('consumable', 'lubricant', before.lubricant, after.lubricant),
    ...thing('part', 'gasket', before.gasket, after.gasket),
    ...thing('part', 'fastener', before.fastener, after.fastener, true),
    ...also.added.flatMap((id) => thing('part', 'further part', undefined, id)),
    ...also.removed.flatMap((id) => thing('part', 'further part', id, undefined)),
  ];
}
