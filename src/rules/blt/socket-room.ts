/** The room that the socket of a joint takes. */

import { SOCKET_AIR_MM } from '../../fasteners/index.ts';
import type { JointPlan } from '../../resolve/index.ts';

/** From bolt to bolt and from bolt to wall, mm; undefined for a key, which stands within its head. */
export function socketRoomMm(plan: JointPlan): { readonly betweenMm: number; readonly toWallMm: number } | undefined {
  if (plan.drive.kind === 'key') return undefined;
  return { betweenMm: plan.socketOutsideMm + SOCKET_AIR_MM, toWallMm: plan.socketOutsideMm / 2 + SOCKET_AIR_MM };
}
