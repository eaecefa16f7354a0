/** The socket or key named for a joint against the size that its head takes. */

import { formatQuantity } from '../../units/index.ts';
import { jointRule } from '../rule.ts';

/** Sizes are nominal and exact; this only absorbs floating point. */
const SAME_METRES = 1e-6;
const DRIVING = ['socket', 'key', 'hand tool', 'special tool'];

export const wrongDrive = jointRule(
  'TRQ009',
  'The mechanic stands at the joint with a socket that does not go on, or one that rounds the head off.',
  (plan, shop) => {
    const socket = shop.tools.find((t) => t.id === plan.socket);
    const wanted = plan.drive.size;
    const fits = (size: { readonly si: number } | undefined): boolean =>
      size !== undefined && Math.abs(size.si - wanted.si) < SAME_METRES;
    if (socket === undefined || fits(socket.size)) return undefined;
    const fitting = shop.tools.filter((t) => DRIVING.includes(t.kind) && fits(t.size));
    return {
      range: plan.ranges['socket'] ?? plan.range,
      message: `\`${socket.id}\` is ${socket.size === undefined ? 'without a size' : formatQuantity(socket.size)}, and the ${plan.head} of ${plan.thread.designation} takes ${formatQuantity(wanted)} (${plan.drive.standard})`,
      hint:
        fitting.length > 0
          ? `did you mean ${fitting.map((t) => `\`${t.id}\``).join(' or ')}?`
          : `add a ${plan.drive.kind === 'key' ? 'key' : 'socket'} of ${formatQuantity(wanted)} to the register`,
    };
  },
);
