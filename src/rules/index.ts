/** The checks over a resolved shop, in order. SRC, FLD and REF faults are reported where files are read and ids resolved. */

import { closeSpacing } from './blt/close-spacing.ts';
import { flangeMismatch } from './blt/flange-mismatch.ts';
import { socketClearance } from './blt/socket-clearance.ts';
import { wallClearance } from './blt/wall-clearance.ts';
import { earlyEffectiveDate } from './rev/early-effective-date.ts';
import { revisionOrder } from './rev/revision-order.ts';
import { selfApproval } from './rev/self-approval.ts';
import type { Rule } from './rule.ts';
import { lubricantCondition } from './trq/lubricant-condition.ts';
import { overProof } from './trq/over-proof.ts';
import { overYield, pastYield } from './trq/over-yield.ts';
import { routesDisagree } from './trq/routes-disagree.ts';
import { tableOutsideBand, tableSlip } from './trq/stated-table.ts';
import { torqueFarOff } from './trq/torque-far-off.ts';
import { torqueOutsideBand } from './trq/torque-outside-band.ts';
import { torqueTableFault } from './trq/torque-table.ts';
import { torqueUnitSlip } from './trq/torque-unit-slip.ts';
import { weakNut } from './trq/weak-nut.ts';
import { wrenchLowRange } from './trq/wrench-low-range.ts';
import { wrenchRange } from './trq/wrench-range.ts';
import { wrongDrive } from './trq/wrong-drive.ts';

export type { Rule } from './rule.ts';

export const RULES: readonly Rule[] = [
  socketClearance,
  wallClearance,
  flangeMismatch,
  closeSpacing,
  torqueUnitSlip,
  torqueOutsideBand,
  torqueFarOff,
  overProof,
  overYield,
  pastYield,
  weakNut,
  lubricantCondition,
  wrenchRange,
  wrenchLowRange,
  routesDisagree,
  wrongDrive,
  torqueTableFault,
  tableSlip,
  tableOutsideBand,
  revisionOrder,
  earlyEffectiveDate,
  selfApproval,
];
