/** What a joint has to hold beyond its torque: clamp force, thread engagement, pressure under the head and on the gasket. */

import { type At, type Entry, field, type MachineContent, optional } from '../model/index.ts';
import { type Context, lookUp } from './context.ts';
import type { JointContent } from './joint-content.ts';
import { defined, rangeOf, readQuantity, sourceNote } from './quantities.ts';
import type { JointPlan } from './types.ts';

type Demands = Pick<
  JointPlan,
  'gasket' | 'clamp' | 'into' | 'engagement' | 'insert' | 'protrusion' | 'bearingLimit' | 'gasketLoad'
>;

/** Reads them; what cannot be read is reported and left out. */
export function readJointDemands(context: Context, machine: Entry<MachineContent>, at: At<JointContent>): Demands {
  const { report } = context;
  const v = at.value;
  if (v.gasket !== undefined) {
    const entries = new Map(Object.entries(machine.value.parts));
    const { file } = machine.node.range;
    lookUp(context, 'part', { entries, faulty: machine.dropped, unread: false, file }, v.gasket, rangeOf(at, 'gasket'));
  }
  const clamp = optional(at, 'clamp');
  const force = clamp && readQuantity(report, field(clamp, 'force'), 'force');
  const bearing = optional(at, 'bearing_limit');
  const pressure = bearing && readQuantity(report, field(bearing, 'pressure'), 'stress');
  return {
    ...(v.insert === true ? { insert: true as const } : {}),
    ...defined({
      gasket: v.gasket,
      into: v.into,
      engagement: readQuantity(report, optional(at, 'engagement'), 'length'),
      protrusion: readQuantity(report, optional(at, 'protrusion'), 'length'),
      clamp: clamp && force && { force, source: sourceNote(clamp.value.source) },
      bearingLimit: bearing && pressure && { pressure, source: sourceNote(bearing.value.source) },
      gasketLoad: readGasketLoad(context, at),
    }),
  };
}

function readGasketLoad({ report }: Context, at: At<JointContent>): JointPlan['gasketLoad'] | undefined {
  const load = optional(at, 'gasket_load');
  if (load === undefined) return undefined;
  const area = readQuantity(report, field(load, 'area'), 'area');
  const limits = defined({
    seating: readQuantity(report, optional(load, 'seating'), 'stress'),
    most: readQuantity(report, optional(load, 'most'), 'stress'),
  });
  return area && { area, source: sourceNote(load.value.source), ...limits };
}
