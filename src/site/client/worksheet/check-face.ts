/** Checks of the joint face: room for the socket, nut, standard flange. */

import { nutWeaker, SOCKET_AIR_MM, sameBoltCircle, socketOutsideMm } from '../../../fasteners/index.ts';
import { formatDecimal } from '../../../units/index.ts';
import { absent, type Check, type CheckedParts, mm, NO_TORQUE, notChecked, verdict } from './check.ts';

const KEY = 'a key stands within its own head and needs no room beside it';

/** The socket against the next bolt. */
export function neighbours({ fastener: { drive }, layout, socketMm }: CheckedParts): Check {
  const name = 'Socket passes the neighbouring bolts';
  if (drive === undefined || layout === undefined) return notChecked(name, 'thread, head and pattern are needed');
  if (drive.kind === 'key' && socketMm === undefined) return notChecked(name, KEY);
  const need = (socketMm ?? socketOutsideMm(drive)) + SOCKET_AIR_MM;
  const from = socketMm === undefined ? 'estimated' : 'as given';
  return {
    name,
    verdict: verdict(layout.chordMm >= need),
    text: `neighbours ${mm(layout.chordMm)} apart, the socket needs ${mm(need)} (${from}, with ${SOCKET_AIR_MM} mm of air)`,
  };
}

/** The socket against the wall. */
export function wall(parts: CheckedParts): Check {
  const { wallMm, socketMm } = parts;
  const { drive } = parts.fastener;
  const name = 'Socket passes the wall';
  if (wallMm === undefined) return notChecked(name, absent(parts, 'wall', 'no distance to a wall is given'));
  if (drive === undefined) return notChecked(name, 'thread and head are needed');
  if (drive.kind === 'key' && socketMm === undefined) return notChecked(name, KEY);
  const need = (socketMm ?? socketOutsideMm(drive)) / 2 + SOCKET_AIR_MM;
  return {
    name,
    verdict: verdict(wallMm >= need),
    text: `the wall is ${mm(wallMm)} from the bolt centre, the socket needs ${mm(need)}`,
  };
}

/** The nut against its bolt, and its proof load against the highest preload. */
export function nut(parts: CheckedParts): Check {
  const { fastener } = parts;
  const { tightening } = parts.read;
  const name = 'Nut carries the load of the bolt';
  if (fastener.nut === undefined) return notChecked(name, absent(parts, 'nut', 'no nut is given'));
  const { grade, strength, thread, nut: own } = fastener;
  if (grade === undefined || strength === undefined || thread === undefined || tightening === undefined) {
    return notChecked(name, NO_TORQUE);
  }
  const { weaker, sentence } = nutWeaker({ nut: own.grade, nutStrength: own.strength, grade, strength, thread });
  const highestN = tightening.result.preloadN.high;
  const kn = (n: number) => `${formatDecimal(n / 1000, 1)} kN`;
  return {
    name,
    verdict: verdict(!weaker && own.strength.proofLoadN >= highestN),
    text: `${sentence}, highest preload ${kn(highestN)}`,
  };
}

/** Names every value that differs from the flange's. */
export function flange(parts: CheckedParts): Check {
  const { layout } = parts;
  const { flange: standard, thread } = parts.fastener;
  const name = 'Pattern is that of the flange';
  if (standard === undefined) return notChecked(name, absent(parts, 'flange', 'no standard flange is given'));
  if (layout === undefined || thread === undefined) return notChecked(name, 'thread and pattern are needed');
  const { pattern } = layout;
  if (pattern.kind !== 'circle') {
    return { name, verdict: 'does not hold', text: `${standard.designation} has one full bolt circle` };
  }
  const counts = [standard.count, ...(standard.alternatives ?? []).map((a) => a.count)];
  const differences = [
    ...(!sameBoltCircle(standard, pattern.diameterMm)
      ? [`circle ${formatDecimal(standard.boltCircleMm, 1)} mm and not ${formatDecimal(pattern.diameterMm, 1)} mm`]
      : []),
    ...(counts.includes(pattern.count) ? [] : [`${counts.join(' or ')} bolts and not ${pattern.count}`]),
    ...(thread.designation === standard.thread ? [] : [`${standard.thread} and not ${thread.designation}`]),
  ];
  return differences.length === 0
    ? { name, verdict: 'holds', text: `${standard.designation}: circle, count and thread are the same` }
    : { name, verdict: 'does not hold', text: `${standard.designation} has ${differences.join(', ')}` };
}
