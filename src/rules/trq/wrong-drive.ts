/** The socket or key named for a joint against the size that its head takes. */

import { formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, lookUp } from '../rule.ts';

/** Sizes are nominal and exact; this only absorbs floating point. */
const SAME_METRES = 1e-6;
const DRIVING = ['socket', 'key', 'hand tool', 'special tool'];

export const wrongDrive: Check = {
  code: 'TRQ009',
  name: 'wrong-drive',
  severity: 'error',
  title: 'The socket or key named does not fit the head.',
  why: 'The mechanic stands at the joint with a socket that does not go on, or one that rounds the head off.',
  sources: ['ISO 4014, ISO 4762, ISO 272 and ASME B18.2.1, B18.2.2, B18.3: widths across flats and keys'],
  example: {
    bad: [
      {
        file: 'tools.yaml',
        from: 'socket-24: { name: 24 mm socket, kind: socket, size: 24 mm, drive: 1/2 in }\n',
        to: 'socket-22: { name: 22 mm socket, kind: socket, size: 22 mm, drive: 1/2 in }\n',
      },
      { file: 'machines/pump.yaml', from: '    socket: socket-24\n', to: '    socket: «socket-22»\n' },
    ],
  },
  found: eachJoint((plan, shop) => {
    const socket = plan.socket === undefined ? undefined : lookUp(shop).tool(plan.socket);
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
  }),
};
