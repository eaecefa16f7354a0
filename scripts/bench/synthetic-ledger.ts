/** Writes a ledger for a synthetic shop: every procedure with so many issues, the last one as its draft stands. */

import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import {
  type Act,
  canonical,
  EMPTY_LEDGER,
  ENGINE,
  freeze,
  HEAD,
  ISSUED,
  LEDGER,
  linesOf,
  sha256,
} from '../../src/control/index.ts';
import type { Document, ResolvedShop } from '../../src/resolve/index.ts';

/** Lines are written at once: no reader can tell, and one after the other would be the square of their number. */
export function writeSyntheticLedger(
  folder: string,
  shop: ResolvedShop,
  revisions: number,
): { bytes: number; lines: number } {
  const acts: Act[] = [];
  let bytes = 0;
  const write = (file: string, text: string): void => {
    const full = path.join(folder, ISSUED, file);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, text);
    bytes += text.length;
  };
  for (const document of shop.documents) {
    const text = freeze(shop, document, ENGINE);
    for (let i = 1; i <= revisions; i++) {
      const rev = i === revisions ? document.revision.rev : String(i);
      const file = `${document.doc}/${rev}.json`;
      write(file, text);
      const comparison = i === 1 ? undefined : compared(document, rev, i);
      if (comparison !== undefined) write(comparison.file, comparison.text);
      acts.push(issueOf(document, rev, { file, sha256: sha256(text) }, comparison));
    }
  }
  const entries = linesOf({ ledger: EMPTY_LEDGER, acts, today: shop.documents[0]?.revision.approved ?? '2026-01-05' });
  const ledger = entries.map((e) => `${canonical(e)}\n`).join('');
  writeFileSync(path.join(folder, LEDGER), ledger);
  writeFileSync(path.join(folder, HEAD), `${entries.length} ${entries.at(-1)?.seal ?? ''}\n`);
  return { bytes: bytes + ledger.length, lines: entries.length };
}

function compared({ doc }: Document, rev: string, i: number): { readonly file: string; readonly text: string } {
  const change = {
    kind: 'value',
    of: 'torque',
    words: `Step 4: torque of the flange joint ${i} → ${i + 1} N·m`,
    variants: [],
  };
  const comparison = { format: 1, doc, from: String(i - 1), to: rev, changes: [change], marks: {} };
  return { file: `${doc}/${rev}.changes.json`, text: `${canonical(comparison)}\n` };
}

function issueOf(
  document: Document,
  rev: string,
  snapshot: { readonly file: string; readonly sha256: string },
  comparison: { readonly file: string; readonly text: string } | undefined,
): Act {
  const { doc, title, revision, variants } = document;
  return {
    kind: 'issue',
    doc,
    rev,
    title,
    change: { class: revision.class, what: revision.what, why: revision.why },
    affects: [],
    author: revision.author,
    approver: revision.approver,
    approved: revision.approved,
    effective: revision.effective,
    snapshot: { ...snapshot, format: 1, engine: ENGINE },
    ...(comparison === undefined ? {} : { comparison: { file: comparison.file, sha256: sha256(comparison.text) } }),
    cards: variants.map((v) => ({
      variant: v.key,
      label: v.label,
      path: v.path.replace(`/${revision.rev}`, `/${rev}`),
      fingerprint: v.fingerprint,
      digest: v.digest,
      sides: 6,
    })),
    distribution: [],
  };
}
