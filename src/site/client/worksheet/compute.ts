/** The worksheet: fields as typed in, everything that can be computed of them out. Pure, and never throws on what is typed. */

import type { Check } from './check.ts';
import { checkAll } from './checks.ts';
import { defined, type Fault, isFilled, type Reader, readMm } from './fault.ts';
import type { Inputs } from './fields.ts';
import { type Fastener, readFastener } from './read-fastener.ts';
import { type Layout, readLayout } from './read-pattern.ts';
import { readTightening, type TighteningRead } from './read-tightening.ts';

export interface Worksheet {
  readonly faults: readonly Fault[];
  readonly fastener: Fastener;
  readonly layout?: Layout;
  readonly read: TighteningRead;
  readonly checks: readonly Check[];
}

/** A fault takes out what rests on its field; everything else is computed. The same functions as those of the build. */
export function computeWorksheet(inputs: Inputs): Worksheet {
  const reader: Reader = { inputs, faults: [] };
  const fastener = readFastener(reader);
  const layout = readLayout(reader, fastener.thread?.diameterMm);
  const wallMm = isFilled(reader, 'wall') ? readMm(reader, 'wall') : undefined;
  const socketMm = isFilled(reader, 'socket') ? readMm(reader, 'socket') : undefined;
  const read = readTightening(reader, fastener);
  const faulty = new Set(reader.faults.flatMap((f) => f.field ?? []));
  const checks = checkAll({ fastener, read, faulty, ...defined({ layout, wallMm, socketMm }) });
  return { faults: reader.faults, fastener, read, checks, ...defined({ layout }) };
}
