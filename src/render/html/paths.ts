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
  /** Of an issue that is not yet effective. */
  comingCard: (cardName: string, rev: string) => `cards/coming/${cardName}-${rev}.pdf`,
  binder: (bench: string) => `binders/${bench}.pdf`,
  poster: 'posters/torque-tables.pdf',
  /** The worksheets of a machine's joints. */
  worksheetPdf: (machine: string) => `worksheets/${machine}.pdf`,
  font: (face: string) => `fonts/${face}.woff2`,
  /** Document control: what is in force, what waits for a receipt, and its lists. */
  control: 'control/',
  openReceipts: 'control/receipts/',
  reviews: 'control/reviews/',
  outside: 'control/outside/',
  temporary: 'control/temporary/',
  feedback: 'control/feedback/',
  fingerprints: 'control/fingerprint/',
  fingerprintList: 'control/fingerprints.json',
  masterList: 'control/master-list.pdf',
  audit: (bench: string) => `benches/${bench}/audit/`,
  /** `number` as printed: `CN-17`. */
  notice: (number: string, bench: string) => `notices/${number}-${bench}.pdf`.toLowerCase(),
  /** Document and revisions as printed: `OF-204`, `B`, `C`. */
  comparison: (doc: string, from: string, to: string) => `compare/${doc}/${from}-${to}/`.toLowerCase(),
  answerCss: 'answer.css',
  scanMark: 'scan-mark.js',
} as const;
