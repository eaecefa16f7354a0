/** What a check of the worksheet is, and what it looks at. */

import { formatDecimal } from '../../../units/index.ts';
import type { FieldKey } from './fields.ts';
import type { Fastener } from './read-fastener.ts';
import type { Layout } from './read-pattern.ts';
import type { TighteningRead } from './read-tightening.ts';

export type Verdict = 'holds' | 'does not hold' | 'not checked';

export interface Check {
  readonly name: string;
  readonly verdict: Verdict;
  /** What was compared with what, or what is missing for it. */
  readonly text: string;
}

export interface CheckedParts {
  readonly fastener: Fastener;
  readonly layout?: Layout;
  readonly read: TighteningRead;
  /** Outside diameter of the socket, mm, measured or estimated. */
  readonly socketMm?: number;
  readonly wallMm?: number;
  /** Fields with a fault: what is typed there counts as missing, and is said to be. */
  readonly faulty: ReadonlySet<FieldKey>;
}

export function notChecked(name: string, text: string): Check {
  return { name, verdict: 'not checked', text };
}

export function verdict(holds: boolean): Verdict {
  return holds ? 'holds' : 'does not hold';
}

export const NO_TORQUE = 'there is no torque yet: mend the fields that are marked';

/** Why a value is missing: nothing is typed, or what is typed cannot be used. */
export function absent({ faulty }: CheckedParts, field: FieldKey, nothing: string): string {
  return faulty.has(field) ? 'what is typed for it cannot be used: see its field' : nothing;
}

export function mm(value: number): string {
  return `${formatDecimal(value, 1)} mm`;
}

export function percent(share: number): string {
  return `${formatDecimal(share * 100, 0)} %`;
}
