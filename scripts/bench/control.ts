/** Ledger and history: verification beside `sha256sum` of the same bytes, and what ten times the history adds to a build. */

import { execFileSync } from 'node:child_process';
import { cpSync, rmSync } from 'node:fs';
import path from 'node:path';
import { diskFiles, publishShop, verifyLedger } from '../../src/control/index.ts';
import { collector } from '../../src/diagnostics/index.ts';
import { type Compiled, compileShop } from '../../src/pipeline/index.ts';
import { answerPage } from '../../src/render/html/control/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { writeSyntheticLedger } from './synthetic-ledger.ts';

export type Row = (what: string, value: string, beside?: string) => void;

const REVISIONS = 10;

/** shop: a synthetic shop without a ledger; it is left as it was. */
export function measureControl(shop: string, procedures: number, row: Row): void {
  const compiled = compileShop({ folder: shop, shown: 'shop', cards: 'suspect' });
  const made = [1, REVISIONS].map((revisions) => {
    const folder = `${shop}-${revisions}`;
    cpSync(shop, folder, { recursive: true });
    const written = writeSyntheticLedger(folder, compiled.resolved, revisions);
    return { folder, revisions, ...written };
  });
  const publishing: number[] = [];
  for (const { folder, revisions, bytes, lines } of made) {
    const files = diskFiles(folder);
    const rules = compiled.resolved.info.control;
    const { report, list } = collector(CATALOGUE);
    const read = verifyLedger(files, 'shop', rules, report);
    if (list().length > 0) throw new Error(`the synthetic ledger has faults: ${list()[0]?.message ?? ''}`);
    const verified = best(() => verifyLedger(files, 'shop', rules, report));
    const summed = best(() =>
      execFileSync('sh', [
        '-c',
        `find ${path.join(folder, 'issued')} -type f -print0 | xargs -0 sha256sum > /dev/null`,
      ]),
    );
    row(
      `ledger of ${lines} lines over ${(bytes / 1048576).toFixed(0)} MB verified`,
      `${((verified / lines) * 1000).toFixed(0)} ms per 1,000 lines`,
      `${(verified / summed).toFixed(1)} times the ${summed.toFixed(0)} ms of \`sha256sum\` over the same files`,
    );
    publishing.push(best(() => published(compiled, read, files)));
    row(
      `issues in force and answers, ${procedures} documents with ${revisions} ${revisions === 1 ? 'issue' : 'issues'} each`,
      `${publishing.at(-1)?.toFixed(0)} ms`,
      `${(revisions - 1) * procedures} superseded cards answered`,
    );
  }
  const [one = 1, ten = 1] = publishing;
  row('ten times the history', `${(ten / one).toFixed(2)} times that`, 'only what is in force is parsed and laid out');
  for (const { folder } of made) rmSync(folder, { recursive: true, force: true });
}

function published(
  compiled: Compiled,
  read: ReturnType<typeof verifyLedger>,
  files: ReturnType<typeof diskFiles>,
): void {
  const { report } = collector(CATALOGUE);
  const { view } = publishShop(
    compiled.resolved,
    read,
    files,
    { asOf: '2026-11-25', drafts: false, shown: 'shop' },
    report,
  );
  const site = { name: 'Shop', language: 'en', safety: 'Take care', asOf: view.asOf, freshDays: 30 };
  for (const answer of view.answers) answerPage(answer, site);
}

/** Shortest of three, in ms: what the machine does beside it only adds. */
function best(run: () => void): number {
  let shortest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 3; i++) {
    const started = performance.now();
    run();
    shortest = Math.min(shortest, performance.now() - started);
  }
  return shortest;
}
