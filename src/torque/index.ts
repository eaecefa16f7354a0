/**
 * Torque: a thread, its strength, a joint condition and a share of preload go in; torque by two routes, preload with its
 * scatter, stress while tightening, rounds and tables come out. Imports only units and fasteners.
 */
export type { Band, BandPlace } from './band.ts';
export { computeTorque } from './compute.ts';
export { CONDITIONS, findCondition, type JointCondition } from './conditions.ts';
export {
  bearingDiameterMm,
  type CombinedStress,
  combinedStress,
  effectiveNutFactor,
  type JointFriction,
  longFormParts,
  longFormPreload,
  longFormTorque,
  shortFormPreload,
  shortFormTorque,
  stressDiameterMm,
  type TorqueParts,
  threadLeverMm,
  vdiAssemblyPreload,
} from './formulas.ts';
export type { Adapter, FrictionPair, TorqueInput } from './input.ts';
export {
  INTERACTION_LIMITS,
  INTERACTION_SOURCE,
  type Interaction,
  predictInteraction,
} from './interaction.ts';
export type { RoundPrediction, TighteningRound } from './interaction-rounds.ts';
export { defaultStack, STEEL_MPA, type Stack, type StackKind } from './interaction-stack.ts';
export { interactionWords } from './interaction-words.ts';
export type { Scatter } from './preload.ts';
export type { TorqueResult } from './result.ts';
export { inOtherUnit, planRounds, type Round } from './rounds.ts';
export { roundsFault } from './rounds-fault.ts';
export { alphaFromScatter, isoWrenchDeviation, scatterFromAlpha } from './scatter.ts';
export { compareStated, type StatedCheck } from './stated.ts';
export type { StatedCell } from './stated-cell.ts';
export {
  type CellComparison,
  compareStatedTable,
  type StatedTableComparison,
  type StatedTableInput,
} from './stated-table.ts';
export { YIELD_CEILING } from './stress.ts';
export { type TorqueTable, type TorqueTableRow, torqueTable } from './table.ts';
export { checkAcrossClasses, checkTorqueTable } from './table-check.ts';
export {
  type PlannedRound,
  type Scale,
  type Tightening,
  type TighteningValues,
  tighten,
  usualGraduation,
} from './tightening.ts';
export { halfDigitNm, unitPairAgrees } from './unit-pair.ts';
export type { WorkingLine } from './working.ts';
export {
  adapterFault,
  adapterSetting,
  torqueAtSetting,
  type WrenchFit,
  type WrenchTask,
  withRunDown,
  wrenchFits,
  wrenchSetting,
} from './wrench.ts';
