/**
 * Geometry: a bolt pattern goes in; hole coordinates, distances, tightening sequences and their balance come out.
 * x right, y up, mm, seen from the tightening side; angles clockwise from 12 o'clock. Imports only units.
 */
export { type Balance, balance, compareWithRound, type MoveBalance } from './balance.ts';
export { type BoltLine, boltLine } from './bolt-line.ts';
export { checkPattern, type PatternFault } from './check-pattern.ts';
export { acrossMm, chordMm, neighbourChordMm } from './chord.ts';
export { checkFeatures, type Feature, type FeatureFault, placeOn } from './features.ts';
export {
  type JackingInput,
  type JackingPlan,
  jackingFault,
  jackingPlan,
  parseTurn,
  turnInWords,
} from './jacking.ts';
export { type LooseningRound, loosening, looseningRounds } from './loosening.ts';
export {
  type ArcPattern,
  type CirclePattern,
  type CirclesPattern,
  type Hole,
  isClosed,
  type Numbering,
  type Pattern,
  type PointsPattern,
  patternCount,
  patternHoles,
  type RectanglePattern,
  type SlotPattern,
} from './pattern.ts';
export type { Ring } from './places.ts';
export type { Method, Sequence, SequenceOptions, Tools } from './sequence.ts';
export { defaultMethod, sequenceFault } from './sequence-fault.ts';
export { slotLineMm } from './slot-places.ts';
export { type BoltSpacing, minimumSpacing } from './spacing.ts';
export { circularSequence, tighteningSequence } from './tightening.ts';
