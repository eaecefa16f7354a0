/** A tool of the register is used nowhere. Sockets and keys are kept in whole sets, whatever the joints of the day need. */

import type { Check } from '../check.ts';
import { usedIn } from './used.ts';

const IN_SETS: readonly string[] = ['socket', 'key'];

export const unusedTool: Check = {
  code: 'REF017',
  name: 'unused-tool',
  severity: 'warning',
  title: 'A tool of the register, other than a socket or key, is used by no step, text or joint.',
  why: 'Either a step has forgotten it, and the mechanic stands there without it, or the register keeps a tool calibrated that no job asks for.',
  sources: ['common practice; sockets and keys are left out, because they are kept in whole sets'],
  example: {
    bad: [
      {
        file: 'tools.yaml',
        from: 'lock: { name: padlock, kind: lockout }\n',
        to: 'lock: { name: padlock, kind: lockout }\n«mirror»: { name: inspection mirror, kind: hand tool }\n',
      },
    ],
    good: [
      {
        file: 'tools.yaml',
        from: 'lock: { name: padlock, kind: lockout }\n',
        to: 'lock: { name: padlock, kind: lockout }\nmirror: { name: inspection mirror, kind: hand tool }\n',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces with a <consumable:wipe>.\n        with: [mirror]\n',
      },
    ],
  },
  found: (shop, tell) => {
    if (shop.incomplete) return;
    const { tools } = usedIn(shop);
    for (const { id, kind, keyRange } of shop.tools) {
      if (tools.has(id) || IN_SETS.includes(kind)) continue;
      tell(keyRange, `tool \`${id}\` is used by no step, text or joint`, {
        hint: `write \`<tool:${id}>\` or \`with: [${id}]\` where it is used, or take it out of the register`,
      });
    }
  },
};
