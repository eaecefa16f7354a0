/** Sheets of document control: change notices, the master list, the audit pack. */
export { layoutAuditPack } from './audit-sheets.ts';
export { layoutMasterList } from './master-list.ts';
export { layoutNotice, type NoticeShop } from './notice.ts';
export type { SheetPage, SheetsLayout } from './sheets.ts';
