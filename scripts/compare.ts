/** `npm run compare -- OF-204 B C`: what differs in meaning between two issues, or between an issue and the draft. */

import {
  compareIssues,
  diskFiles,
  draftOf,
  type IssueEntry,
  type Side,
  sideOf,
  snapshotOf,
} from '../src/control/index.ts';
import { didYouMean, hasErrors } from '../src/diagnostics/index.ts';
import { ledgerNow, type Opened, openShop, SHOP_OPTION, say } from './lib/control-command.ts';
import { comparisonLines } from './lib/control-compare.ts';
import { runCommand, UsageFault } from './lib/faults.ts';
import { readCommand } from './lib/options.ts';
import { faultCount } from './lib/summary.ts';

await runCommand(() => {
  const { options, words } = readCommand(
    'compare',
    'Compares two issues of a document by their meaning. With one revision: that issue and the draft. With none: the latest issue and the draft.',
    { ...SHOP_OPTION, json: { type: 'boolean', help: 'the comparison as JSON' } },
    { name: 'DOC A B', help: 'document number, older revision, newer revision' },
  );
  const [doc, a, b, further] = words;
  if (doc === undefined || further !== undefined) {
    throw new UsageFault(
      doc === undefined ? 'the document number is missing' : `\`${further ?? ''}\` is one word too many`,
      'write `npm run compare -- DOC A B`',
    );
  }
  const opened = openShop(options);
  const issues = issuesOf(opened, doc);
  const older = a === undefined ? latest(issues, doc) : revision(issues, doc, a);
  const before = side(opened, older);
  const newer = b === undefined ? undefined : revision(issues, doc, b);
  const after = newer === undefined ? draft(opened, doc) : side(opened, newer);
  const comparison = compareIssues(before, after);
  if (options['json'] === true) process.stdout.write(`${JSON.stringify(comparison, null, 2)}\n`);
  else {
    const to = newer === undefined ? `the draft (Rev ${after.document.revision.rev})` : `Rev ${newer.rev}`;
    say(comparisonLines(comparison, { from: `Rev ${older.rev}`, to }));
  }
  return 0;
});

function issuesOf({ compiled, control }: Opened, doc: string): readonly IssueEntry[] {
  const issues = ledgerNow(control, compiled.resolved).entries.filter((e): e is IssueEntry => e.kind === 'issue');
  const own = issues.filter((e) => e.doc === doc);
  if (own.length > 0) return own;
  const known = [...new Set(issues.map((e) => e.doc))].sort();
  const drafted = compiled.resolved.documents.some((d) => d.doc === doc);
  throw new UsageFault(
    drafted ? `${doc} was never issued: there is nothing to compare its draft with` : `there is no document ${doc}`,
    didYouMean(doc, known) ?? (known.length === 0 ? 'no document was issued so far' : `issued are ${known.join(', ')}`),
  );
}

function latest(issues: readonly IssueEntry[], doc: string): IssueEntry {
  const found = issues.at(-1);
  if (found === undefined) throw new RangeError(`${doc} has no issue`);
  return found;
}

function revision(issues: readonly IssueEntry[], doc: string, rev: string): IssueEntry {
  const found = issues.find((e) => e.rev === rev);
  if (found !== undefined) return found;
  const revs = issues.map((e) => e.rev);
  throw new UsageFault(
    `there is no issue ${rev} of ${doc}`,
    revs.find((r) => r.toUpperCase() === rev.toUpperCase()) === undefined
      ? `its issues are ${revs.join(', ')}`
      : `did you mean \`${rev.toUpperCase()}\`?`,
  );
}

function side({ control }: Opened, issue: IssueEntry): Side {
  const snapshot = snapshotOf(diskFiles(control.folder), issue, control.shown);
  if (snapshot !== undefined) return snapshot;
  throw new UsageFault(
    `the snapshot of ${issue.doc} Rev ${issue.rev} has the format ${issue.snapshot.format}, which this version does not know`,
    `compare with version ${issue.snapshot.engine}, which wrote it, or a later one`,
  );
}

/** With errors in the content the draft may be in part unread: that is said, and what can be compared is. */
function draft({ compiled }: Opened, doc: string): Side {
  const { diagnostics, resolved } = compiled;
  if (hasErrors(diagnostics)) {
    process.stderr.write(
      `${faultCount(diagnostics)} in the content: the draft may be read in part (\`npm run check\` shows them)\n`,
    );
  }
  return sideOf(resolved, draftOf(resolved, doc));
}
