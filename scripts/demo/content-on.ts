/** The demo's content as it stood on a day of its history. */

import { cpSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { UsageFault } from '../lib/faults.ts';
import { PROGRAM_FOLDER } from '../lib/options.ts';
import { EARLIER, type Edit, OLD_MAIN } from './earlier.ts';

export const CONTENT = path.join(PROGRAM_FOLDER, 'content');
/** From this day on the old main is gone from the content. */
const OLD_MAIN_GONE = '2026-08-18';

/** Change records as they stand in the files: `- rev: C` and its lines. */
const RECORD = / {2}- rev: (\w+)\n {4}effective: (\S+)\n {4}approved: (\S+)\n(?: {4}.*\n)*/g;

/** The content as it stood on that day; what is in the folder's ledger stays. */
export function contentOn(day: string, folder: string): void {
  const kept = `${folder}-issued`;
  rmSync(kept, { recursive: true, force: true });
  try {
    renameSync(path.join(folder, 'issued'), kept);
  } catch {
    // Nothing was issued yet.
  }
  rmSync(folder, { recursive: true, force: true });
  cpSync(CONTENT, folder, {
    recursive: true,
    filter: (from) => !['issued', 'keys'].includes(path.relative(CONTENT, from).split(path.sep)[0] ?? ''),
  });
  try {
    renameSync(kept, path.join(folder, 'issued'));
  } catch {
    // The same.
  }
  if (day < OLD_MAIN_GONE) addOldMain(folder);
  for (const { doc, rev, edits } of [...EARLIER].reverse()) {
    if (approvedOn(folder, doc, rev) <= day) continue;
    for (const edit of edits) change(folder, edit);
  }
  cutLaterRecords(folder, day);
  cutLaterChanges(folder, day);
}

function change(folder: string, { file, from, to }: Edit): void {
  const full = path.join(folder, file);
  const text = readFileSync(full, 'utf8');
  const changed = text.replace(from, to);
  if (changed === text)
    throw new UsageFault(`\`${String(from)}\` is not in ${file}`, 'bring scripts/demo/earlier.ts up to date');
  writeFileSync(full, changed);
}

function addOldMain(folder: string): void {
  let text = readFileSync(path.join(CONTENT, OLD_MAIN.like), 'utf8');
  for (const { from, to } of OLD_MAIN.edits) text = text.replace(from, to);
  writeFileSync(path.join(folder, OLD_MAIN.file), text);
  change(folder, { file: 'benches.yaml', from: 'binder: [OF-204, OF-131,', to: 'binder: [OF-204, OF-109, OF-131,' });
}

function approvedOn(folder: string, doc: string, rev: string): string {
  for (const [, name, , approved] of readFileSync(procedureFile(folder, doc), 'utf8').matchAll(RECORD)) {
    if (name === rev && approved !== undefined) return approved;
  }
  throw new UsageFault(`${doc} has no revision ${rev}`, 'bring scripts/demo/earlier.ts up to date');
}

function procedureFile(folder: string, doc: string): string {
  const { file } = EARLIER.find((e) => e.doc === doc)?.edits.find((e) => e.file.startsWith('procedures/')) ?? {};
  return path.join(folder, file ?? `procedures/${doc.toLowerCase()}-sea-water-pump-seal.yaml`);
}

function cutLaterRecords(folder: string, day: string): void {
  for (const doc of EARLIER.map((e) => e.doc)) {
    const file = procedureFile(folder, doc);
    const text = readFileSync(file, 'utf8');
    writeFileSync(
      file,
      text.replace(RECORD, (record: string, _rev: string, _effective: string, approved: string) =>
        approved <= day ? record : '',
      ),
    );
  }
}

/** Temporary changes that were not approved by then. */
function cutLaterChanges(folder: string, day: string): void {
  const file = path.join(folder, 'temporary.yaml');
  const left = readFileSync(file, 'utf8').replace(/^TC-\d+:\n(?: {2}.*\n)*/gm, (change) =>
    (/^ {2}approved: (\S+)$/m.exec(change)?.[1] ?? '') <= day ? change : '',
  );
  if (/^TC-/m.test(left)) writeFileSync(file, left);
  else rmSync(file);
}
