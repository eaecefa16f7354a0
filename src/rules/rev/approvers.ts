/** Who may approve what somebody else has written. */

import type { ResolvedShop } from '../../resolve/index.ts';

/** What an author does who needs an approver. */
export function approverHint(shop: ResolvedShop, author: string, then: string): string {
  const able = shop.people.filter((p) => p.approves.length > 0 && p.id !== author).map((p) => `\`${p.id}\``);
  return able.length > 0
    ? `name one who may approve: ${able.join(', ')}${then}`
    : 'say in people.yaml who else may approve: `approves: [major, minor]`';
}
