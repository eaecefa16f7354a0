/** The socket or key named for a joint against the size that its head takes. */

import { formatQuantity } from '../../units/index.ts';
import { eachJoint, type Rule } from '../rule.ts';

export const wrongDrive: Rule = {
  code: 'TRQ009',
  why: 'The mechanic stands at the joint with a socket that does not go on, or one that rounds the head off.',
  check: (shop, report) => {
    const tools = new Map(shop.tools.map((t) => [t.id, t]));
    eachJoint(shop, (plan, variant) => {
      const socket = plan.socket === undefined ? undefined : tools.get(plan.socket);
      if (socket === undefined) return;
      const kind = plan.drive.kind === 'key' ? 'key' : 'socket';
      const right = socket.size !== undefined && Math.abs(socket.size.si - plan.drive.size.si) < 1e-5;
      if (right) return;
      const fitting = shop.tools.filter(
        (t) =>
          ['socket', 'key', 'hand tool'].includes(t.kind) &&
          t.size !== undefined &&
          Math.abs(t.size.si - plan.drive.size.si) < 1e-5,
      );
      report(
        'TRQ009',
        plan.ranges['socket'] ?? plan.range,
        `\`${socket.id}\` is ${socket.size === undefined ? 'without a size' : formatQuantity(socket.size)}, and the ${plan.head} of ${plan.thread.designation} takes ${formatQuantity(plan.drive.size)} (${plan.drive.standard})${variant}`,
        {
          hint:
            fitting.length > 0
              ? `did you mean ${fitting.map((t) => `\`${t.id}\``).join(' or ')}?`
              : `add a ${kind} of ${formatQuantity(plan.drive.size)} to the register`,
        },
      );
    });
  },
};
