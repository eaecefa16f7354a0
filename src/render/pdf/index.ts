/** PDFs: cards, binders, posters, worksheets. Bytes out; files are written by the commands. */
export { paintBinder } from './paint-binder.ts';
export { paintCard } from './paint-card.ts';
export { paintTables } from './paint-tables.ts';
export { paintWorksheets } from './paint-worksheets.ts';
