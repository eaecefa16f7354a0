/**
 * Fasteners: a designation, a grade or a head in words goes in; diameters, areas, strengths, wrench sizes and bearing
 * faces come out, each with its published source. Imports only units.
 */
export { type Bearing, bearingOf } from './bearing.ts';
export { type Drive, driveMm, driveOf, socketOutsideMm } from './drive.ts';
export { GRADES, type Grade } from './grade.ts';
export { HEADS, type Head } from './head.ts';
export { parseGrade } from './parse-grade.ts';
export { parseThread } from './parse-thread.ts';
export { type Strength, strengthOf } from './strength.ts';
export type { Thread } from './thread.ts';
export { METRIC_THREADS, threadsOf, UNIFIED_THREADS } from './threads.ts';
