/** Something that cures, without its shelf life. */

import type { Check } from '../check.ts';
import { aKind, eachLacking } from './kinds.ts';

const CURING: ReadonlySet<string> = new Set(['threadlocker', 'sealant', 'adhesive']);

const LAY = '      - do: Lay on the new <part:gasket>.\n';
const USED = `${LAY}        use: [paste]\n`;
const paste = (key: string, more: string): string =>
  `wipe: { name: lint-free wipe, kind: wipe }\n${key}: { name: joint paste, kind: sealant, safety_data: folder S1,${more} waste: closed can }\n`;
const WIPE = 'wipe: { name: lint-free wipe, kind: wipe }\n';

export const noShelfLife: Check = {
  code: 'CSM002',
  name: 'no-shelf-life',
  severity: 'warning',
  title: 'A threadlocker, a sealant or an adhesive has no shelf life.',
  why: 'An old tube goes on like a new one and never sets; the screw backs out or the joint weeps weeks later.',
  sources: ['common practice: adhesives by their use-by date; ISO 2230 and SAE ARP5316 ask it of rubber (memory)'],
  example: {
    bad: [
      { file: 'consumables.yaml', from: WIPE, to: paste('«paste»', '') },
      { file: 'procedures/mw-1.yaml', from: LAY, to: USED },
    ],
    good: [
      { file: 'consumables.yaml', from: WIPE, to: paste('paste', ' shelf_life: use-by date on the tube,') },
      { file: 'procedures/mw-1.yaml', from: LAY, to: USED },
    ],
  },
  found: eachLacking(
    'shelf_life',
    (c) => (CURING.has(c.kind) ? `is ${aKind(c)}` : c.cure === undefined ? undefined : 'cures'),
    () => 'write what stands on the pack or its data sheet, in words such as `shelf_life: use-by date on the tube`',
  ),
};
