/**
 * Geometry: a bolt pattern goes in; hole coordinates, distances, tightening sequences and their balance come out.
 * x right, y up, mm, seen from the tightening side; angles clockwise from 12 o'clock. Imports only units.
 */
export { type Balance, balance } from './balance.ts';
export { checkPattern, type PatternFault } from './check-pattern.ts';
export { chordMm, neighbourChordMm } from './chord.ts';
export { type Hole, type Pattern, patternCount, patternHoles } from './pattern.ts';
export { loosening, type Sequence, tighteningSequence } from './sequence.ts';
