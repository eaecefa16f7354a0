/**
 * Fasteners: a designation, a grade, a head, a nut or a named flange in words goes in; diameters, areas, strengths,
 * wrench sizes, bearing faces and drillings come out, each with its published source. Imports only units.
 */
export { bearingOf } from './bearing.ts';
export type { Bearing } from './bearing-ring.ts';
export { driveOf, SOCKET_AIR_MM, socketOutsideMm } from './drive.ts';
export { type Drive, driveMm } from './drive-lookup.ts';
export { FLANGES, sameBoltCircle } from './flange.ts';
export type { Flange, FlangeAlternative } from './flange-type.ts';
export { GRADES, type Grade } from './grade.ts';
export { HEADS, type Head } from './head.ts';
export { type NutKind, nutBearingOf, nutDriveOf } from './nut.ts';
export { NUT_GRADES, type NutGrade } from './nut-grade.ts';
export { type NutAndBolt, type NutComparison, type NutMatch, nutMatches, nutWeaker } from './nut-match.ts';
export { type NutForm, type NutStrength, nutStrengthOf } from './nut-strength.ts';
export { parseFlange } from './parse-flange.ts';
export { parseGrade } from './parse-grade.ts';
export { parseNut } from './parse-nut.ts';
export { parseThread } from './parse-thread.ts';
export { type Strength, strengthOf } from './strength.ts';
export type { Thread } from './thread.ts';
export { METRIC_THREADS, threadsOf, UNIFIED_THREADS } from './threads.ts';
export { type Turned, type TurnedInput, turnedOf } from './turned.ts';
