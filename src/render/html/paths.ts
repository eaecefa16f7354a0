/** Where each kind of page stands: the only place that knows the folders of the site. */

export const paths = {
  home: '',
  procedures: 'procedures/',
  machines: 'machines/',
  benches: 'benches/',
  tools: 'tools/',
  consumables: 'consumables/',
  tables: 'tables/',
  revisions: 'revisions/',
  worksheet: 'worksheet/',
  orders: 'orders/',
  orderBook: 'orders/needs.json',
  about: 'about/',
  checks: 'checks/',
  check: (code: string) => `checks/${code.toLowerCase()}/`,
  report: 'report/',
  searchIndex: 'search-index.json',
  procedure: (slug: string) => `procedures/${slug}/`,
  /** `path` is `Variant.path`. */
  variant: (path: string) => `${path}/`,
  machine: (id: string) => `machines/${id}/`,
  part: (machine: string, id: string) => `machines/${machine}/parts/${id}/`,
  joint: (machine: string, id: string) => `machines/${machine}/joints/${id}/`,
  bench: (id: string) => `benches/${id}/`,
  tool: (id: string) => `tools/${id}/`,
  consumable: (id: string) => `consumables/${id}/`,
  table: (id: string) => `tables/${id}/`,
  /** Apart from the computed ones, whose ids the shop does not choose. */
  statedTable: (id: string) => `tables/from-manuals/${id}/`,
  card: (cardName: string) => `cards/${cardName}.pdf`,
  binder: (bench: string) => `binders/${bench}.pdf`,
  poster: 'posters/torque-tables.pdf',
  /** The worksheets of a machine's joints. */
  worksheetPdf: (machine: string) => `worksheets/${machine}.pdf`,
  font: (face: string) => `fonts/${face}.woff2`,
} as const;
