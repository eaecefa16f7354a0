/** Who may approve what somebody else has written. */

import type { ResolvedShop } from '../../resolve/index.ts';

/** What an author does who needs an approver. */
export function approverHint(shop: ResolvedShop, author: string, then: string): string {
  const able = shop.people.filter((p) => p.approves.length > 0 && p.id !== author).map((p) => `\`${p.id}\``);
  return able.length > 0
    ? `have it approved by one who may, and name that person: ${able.join(', ')}${then}`
    : 'nobody else may approve by people.yaml: where somebody does, give that person `approves: [major, minor]`, have it approved and name them here';
}
