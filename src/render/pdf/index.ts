/** PDFs: cards, binders, posters, worksheets. Bytes out; files are written by the commands. */
export { paintAuditPack } from './paint-audit-pack.ts';
export { paintBinder } from './paint-binder.ts';
export { paintCard } from './paint-card.ts';
export { paintMasterList } from './paint-master-list.ts';
export { paintNotice } from './paint-notices.ts';
export { paintTables } from './paint-tables.ts';
export { paintWorksheets } from './paint-worksheets.ts';
