/** The checks of the family TRQ, in order. */

import type { Check } from '../check.ts';
import { adapter } from './adapter.ts';
import { aluminiumThread } from './aluminium-thread.ts';
import { belowClamp } from './below-clamp.ts';
import { firstRound } from './first-round.ts';
import { gasketLoad } from './gasket-load.ts';
import { headPressure } from './head-pressure.ts';
import { lubricantCondition } from './lubricant-condition.ts';
import { noCircularPass } from './no-circular-pass.ts';
import { overProof } from './over-proof.ts';
import { overYield } from './over-yield.ts';
import { pastYield } from './past-yield.ts';
import { roundsNotRising } from './rounds-not-rising.ts';
import { routesDisagree } from './routes-disagree.ts';
import { runDownNotStated } from './run-down-not-stated.ts';
import { shortEngagement } from './short-engagement.ts';
import { shortProtrusion } from './short-protrusion.ts';
import { singleRound } from './single-round.ts';
import { tableOutsideBand } from './table-outside-band.ts';
import { tableSlip } from './table-slip.ts';
import { torqueFarOff } from './torque-far-off.ts';
import { torqueOutsideBand } from './torque-outside-band.ts';
import { torqueTableFault } from './torque-table.ts';
import { torqueUnitSlip } from './torque-unit-slip.ts';
import { twoUnitsDiffer } from './two-units-differ.ts';
import { underTightened } from './under-tightened.ts';
import { unsourcedTorque } from './unsourced-torque.ts';
import { weakNut } from './weak-nut.ts';
import { wrenchLowRange } from './wrench-low-range.ts';
import { wrenchRange } from './wrench-range.ts';
import { wrongDrive } from './wrong-drive.ts';

export const TRQ: readonly Check[] = [
  torqueUnitSlip,
  torqueOutsideBand,
  torqueFarOff,
  overProof,
  wrenchRange,
  wrenchLowRange,
  routesDisagree,
  roundsNotRising,
  wrongDrive,
  unsourcedTorque,
  torqueTableFault,
  weakNut,
  adapter,
  lubricantCondition,
  tableSlip,
  tableOutsideBand,
  overYield,
  pastYield,
  underTightened,
  belowClamp,
  shortEngagement,
  shortProtrusion,
  aluminiumThread,
  headPressure,
  gasketLoad,
  runDownNotStated,
  firstRound,
  noCircularPass,
  singleRound,
  twoUnitsDiffer,
];
