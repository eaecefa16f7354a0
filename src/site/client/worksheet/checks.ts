/** Everything that the worksheet compares, in a fixed order. */

import type { Check, CheckedParts } from './check.ts';
import { flange, neighbours, nut, wall } from './check-face.ts';
import { highestPreload, routes, statedTorque, stress, wrenchRange } from './check-torque.ts';

const CHECKS = [statedTorque, routes, highestPreload, stress, wrenchRange, neighbours, wall, nut, flange] as const;

/** Every check, those that could not be made among them. */
export function checkAll(parts: CheckedParts): readonly Check[] {
  return CHECKS.map((check) => check(parts));
}
