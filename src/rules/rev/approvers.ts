/** Who may approve what somebody else has written. */

import type { ResolvedShop, Revision } from '../../resolve/index.ts';

/** What an author does who needs an approver of this class of change. then: what else may be done. */
export function approverHint(shop: ResolvedShop, author: string, of: Revision['class'], then: string): string {
  const able = shop.people.filter((p) => p.approves.includes(of) && p.id !== author).map((p) => `\`${p.id}\``);
  return able.length > 0
    ? `have it approved by one who may, and name that person: ${able.join(', ')}${then}`
    : `nobody else may approve a ${of} change by people.yaml: where somebody does, give that person \`approves: [major, minor]\`, have it approved and name them here`;
}

/** `nothing`, `minor changes only`: what people.yaml lets somebody approve. */
export function rightsInWords(approves: readonly string[]): string {
  return approves.length === 0 ? 'nothing' : `${approves.join(' and ')} changes only`;
}
