/**
 * Torque: a thread, its strength, a joint condition and a share of preload go in; torque by two routes, preload with its
 * scatter, stress while tightening, rounds and tables come out. Imports only units and fasteners.
 */
export type { Band } from './band.ts';
export { computeTorque, type TorqueInput, type TorqueResult } from './compute.ts';
export { CONDITIONS, findCondition, type JointCondition } from './conditions.ts';
export {
  bearingDiameterMm,
  type CombinedStress,
  combinedStress,
  effectiveNutFactor,
  type JointFriction,
  longFormPreload,
  longFormTorque,
  shortFormPreload,
  shortFormTorque,
  stressDiameterMm,
  threadLeverMm,
  vdiAssemblyPreload,
} from './formulas.ts';
export { inOtherUnit, planRounds, type Round } from './rounds.ts';
export { alphaFromScatter, isoWrenchDeviation, scatterFromAlpha } from './scatter.ts';
export { compareStated, type StatedCheck, unitPairAgrees } from './stated.ts';
export { checkTorqueTable, type TorqueTable, type TorqueTableRow, torqueTable } from './table.ts';
export type { WorkingLine } from './working.ts';
export { adapterSetting, type WrenchFit, withRunDown, wrenchFits } from './wrench.ts';
