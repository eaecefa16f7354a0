/** Whether the acts of the ledger follow the rules of control, one after the other: what a forger with the program would break. */

import type { Range, Report } from '../diagnostics/index.ts';
import { fingerprintOf } from '../resolve/fingerprint.ts';
import { isDay } from './dates.ts';
import type { Entry, IssueEntry } from './types.ts';

interface Standing {
  issues: Map<string, string>;
  suspended: boolean;
  withdrawn: boolean;
}

export function checkActs(entries: readonly Entry[], placeOf: (entry: Entry) => Range, report: Report): void {
  const documents = new Map<string, Standing>();
  const temporaries = new Map<string, boolean>();
  let recorded = '';
  for (const entry of entries) {
    const faults: string[] = [];
    if (entry.recorded < recorded) {
      faults.push(`it was written on ${entry.recorded}, and the line before it on ${recorded}`);
    }
    recorded = entry.recorded;
    const wrong = datesOf(entry).find((d) => !isDay(d));
    if (wrong !== undefined) faults.push(`\`${wrong}\` is no day of the calendar`);
    faults.push(...faultsOf(entry, documents, temporaries));
    for (const fault of faults) {
      report('LDG010', placeOf(entry), `line ${entry.seq} of the ledger breaks the rules of control: ${fault}`, {
        hint: 'no command writes such a line: take the ledger back from version control, and find out who wrote it',
      });
    }
  }
}

function datesOf(entry: Entry): readonly string[] {
  const dates = [entry.recorded];
  if ('approved' in entry) dates.push(entry.approved);
  if ('effective' in entry) dates.push(entry.effective);
  if ('on' in entry) dates.push(entry.on);
  if ('from' in entry) dates.push(entry.from, entry.until);
  return dates;
}

function faultsOf(
  entry: Entry,
  documents: Map<string, Standing>,
  temporaries: Map<string, boolean>,
): readonly string[] {
  if (entry.kind === 'receipt') {
    const line = Number(/^CN-(\d{1,9})(?:-END)?$/.exec(entry.notice)?.[1] ?? entry.seq);
    return [
      ...(line < entry.seq ? [] : [`there is no notice ${entry.notice} yet`]),
      ...(entry.on > entry.recorded ? ['it was written before the day that it tells of'] : []),
    ];
  }
  if (entry.kind === 'temporary-end') {
    const open = temporaries.get(entry.number);
    temporaries.set(entry.number, false);
    return open === true ? [] : [`no temporary change ${entry.number} is open`];
  }
  const known = documents.get(entry.doc);
  const faults: string[] = [];
  // Until it takes effect, a withdrawn document may still be suspended or reviewed.
  const renews = entry.kind === 'issue' || entry.kind === 'withdraw' || entry.kind === 'temporary';
  if (renews && known?.withdrawn === true) faults.push(`${entry.doc} was withdrawn before`);
  if (entry.kind === 'issue') {
    if (entry.author === entry.approver)
      faults.push(`\`${entry.author}\` approves what \`${entry.author}\` has written`);
    if (entry.effective < entry.approved) faults.push('it takes effect before it was approved');
    if (entry.approved > entry.recorded) faults.push('it was written before it was approved');
    const standing = known ?? { issues: new Map<string, string>(), suspended: false, withdrawn: false };
    if (standing.issues.has(entry.rev)) faults.push(`${entry.doc} already has a revision ${entry.rev}`);
    const latest = [...standing.issues.values()].at(-1);
    // The first line about a document may record what hung on the wall before the ledger was begun.
    if (latest !== undefined && entry.effective < entry.recorded) faults.push('it takes effect before it was written');
    if (latest !== undefined && entry.effective < latest) {
      faults.push(`it takes effect on ${entry.effective}, and the issue before it on ${latest}`);
    }
    faults.push(...strangers(entry));
    standing.issues.set(entry.rev, entry.effective);
    documents.set(entry.doc, standing);
    return faults;
  }
  if (known === undefined) return [`${entry.doc} was never issued`];
  switch (entry.kind) {
    case 'suspend':
      if (known.suspended) faults.push(`${entry.doc} is suspended already`);
      known.suspended = true;
      break;
    case 'reinstate':
      if (!known.suspended) faults.push(`${entry.doc} is not suspended`);
      if (entry.by === entry.approver) faults.push(`\`${entry.by}\` asks for it and approves it`);
      known.suspended = false;
      break;
    case 'withdraw':
      if (entry.by === entry.approver) faults.push(`\`${entry.by}\` asks for it and approves it`);
      if (entry.effective < entry.recorded) faults.push('it takes effect before it was written');
      known.withdrawn = true;
      break;
    case 'temporary':
      if (temporaries.has(entry.number)) faults.push(`${entry.number} is taken already`);
      if (entry.author === entry.approver)
        faults.push(`\`${entry.author}\` approves what \`${entry.author}\` has written`);
      if (entry.approved > entry.recorded) faults.push('it was written before it was approved');
      if (entry.until < entry.from || entry.from < entry.approved) faults.push('its dates are out of order');
      if (!known.issues.has(entry.rev)) faults.push(`${entry.doc} has no revision ${entry.rev}`);
      temporaries.set(entry.number, true);
      break;
    case 'review':
      if (entry.on > entry.recorded) faults.push('it was written before the day that it tells of');
      if (!known.issues.has(entry.rev)) faults.push(`${entry.doc} has no revision ${entry.rev}`);
      break;
  }
  return faults;
}

/** What an issue names that belongs to another one: parts of two revisions are not mixed. */
function strangers({ doc, rev, snapshot, comparison, cards }: IssueEntry): readonly string[] {
  const own = `${doc}/${rev}`;
  const faults: string[] = [];
  if (snapshot.file !== `${own}.json`) faults.push(`its snapshot is \`${snapshot.file}\``);
  if (comparison !== undefined && comparison.file !== `${own}.changes.json`) {
    faults.push(`its comparison is \`${comparison.file}\``);
  }
  for (const { variant, path, digest, fingerprint } of cards) {
    if (path !== ['C', doc, rev, ...(variant === '' ? [] : [variant.toUpperCase()])].join('/')) {
      faults.push(`its card has the address \`${path}\``);
    }
    if (fingerprint !== fingerprintOf(digest)) faults.push(`the fingerprint ${fingerprint} is not of its card`);
  }
  return faults;
}
