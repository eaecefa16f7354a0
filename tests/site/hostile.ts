/** The demo shop with every name and text made hostile: markup, a word without end, text that runs from right to left. */

import type { CheckedShop } from '../../src/resolve/index.ts';

/** What must appear as text and never as markup. */
export const MARKUP = '<img src=x onerror="window.hit=1"><script>window.hit=1</script>\'"&amp;</p></li></table>';
const LONG = 'W'.repeat(140);
const RIGHT_TO_LEFT = '\u202eשלום\u202c';
const TAIL = ` ${MARKUP} ${LONG} ${RIGHT_TO_LEFT}`;

const KEYS: ReadonlySet<string> = new Set([
  ...[
    'name',
    'title',
    'text',
    'note',
    'about',
    'what',
    'why',
    'where',
    'place',
    'kept',
    'material',
    'kit',
    'serial',
    'number',
    'facing',
    'hold',
  ],
  ...[
    'machineName',
    'wrenchName',
    'socketName',
    'fastenerName',
    'lubricantName',
    'toolName',
    'document',
    'edition',
    'safety',
    'report',
    'by',
  ],
  ...[
    'view',
    'top',
    'limitText',
    'detail',
    'amount',
    'role',
    'mark',
    'hazards',
    'alsoCalled',
    'formerly',
    'records',
    'at',
    'energy',
    'only',
  ],
]);

function poison(value: unknown, key: string): unknown {
  // The working is the program's own: no word of an author stands in its formulas.
  if (key === 'working') return value;
  if (typeof value === 'string') return KEYS.has(key) ? value + TAIL : value;
  if (Array.isArray(value)) return value.map((v) => poison(v, key));
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, poison(v, k)]));
  return value;
}

/** One document of the shop and what belongs to it, poisoned, at home under `/shop/`. */
export function hostileShop(shop: CheckedShop): CheckedShop {
  const document = shop.documents.find((d) => d.variants.length > 1) ?? shop.documents[0];
  const small = {
    ...shop,
    info: { ...shop.info, basePath: '/shop/' },
    documents: shop.documents.filter((d) => d === document),
    machines: shop.machines.filter((m) => m.id === document?.machine),
    tools: shop.tools.slice(0, 12),
    consumables: shop.consumables.slice(0, 6),
    benches: shop.benches.slice(0, 2),
    tables: shop.tables.slice(0, 1),
  };
  // Step and hole numbers are numbers; only words are poisoned.
  return poison(small, '') as CheckedShop;
}
