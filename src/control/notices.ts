/** Change notices: what each bench has to take out and put in because of one line of the ledger, and whether it has been done. */

import { causesOf, type NoticeFacts } from './causes.ts';
import { daysBetween } from './dates.ts';
import type { Notice, NoticeCard, ReceiptEntry } from './types.ts';

export type { NoticeFacts } from './causes.ts';

/** All notices up to the day, oldest first: those that wait for a receipt, and those that have one. */
export function noticesOf(facts: NoticeFacts): {
  readonly open: readonly Notice[];
  readonly received: readonly Notice[];
} {
  const receipts = new Map<string, ReceiptEntry>();
  for (const e of facts.entries) {
    if (e.kind === 'receipt' && e.recorded <= facts.asOf) receipts.set(`${e.notice} ${e.bench}`, e);
  }
  const byId = new Map(facts.benches.map((b) => [b.id, b]));
  const open: Notice[] = [];
  const received: Notice[] = [];
  /** Notices that still wait at a bench, by bench and document. */
  const waiting = new Map<string, readonly Waiting[]>();
  const moot = new Set<Notice>();
  for (const { benches, seq: _seq, change, ...cause } of causesOf(facts)) {
    for (const { bench, copy } of benches) {
      const about = byId.get(bench);
      const receipt = receipts.get(`${cause.number} ${bench}`);
      const place = `${bench} ${cause.doc}`;
      const all = waiting.get(place) ?? [];
      // A temporary change takes the place of nothing but itself; whatever concerns the whole document, of everything.
      const before = all.filter((w) => change === undefined || w.change === change);
      const age = daysBetween(cause.due, facts.asOf);
      // What the older notices would have taken out may still hang there.
      const left = change === undefined ? before.flatMap((w) => w.notice.takeOut) : [];
      const notice: Notice = {
        ...cause,
        takeOut: [...cardsLeft(left, cause.takeOut), ...cause.takeOut],
        bench,
        benchName: about?.name ?? bench,
        place: about?.place ?? '',
        copy,
        copies: facts.benches.length,
        ...(receipt === undefined ? {} : { receipt }),
        ...(age < 0 ? {} : { age }),
        overdue: receipt === undefined && age > cause.limitDays,
      };
      // Once its day has come, the newer notice asks for everything that the older ones asked for.
      if (age >= 0) for (const w of before) moot.add(w.notice);
      const others = all.filter((w) => !before.includes(w));
      if (receipt === undefined) {
        open.push(notice);
        waiting.set(place, [...others, { notice, change }]);
      } else {
        received.push(notice);
        waiting.set(place, others);
      }
    }
  }
  return { open: open.filter((n) => !moot.has(n)), received };
}

interface Waiting {
  readonly notice: Notice;
  readonly change: string | undefined;
}

/** Each card once, without those of a revision that is taken out anyway. */
function cardsLeft(left: readonly NoticeCard[], taken: readonly NoticeCard[]): readonly NoticeCard[] {
  const key = (c: NoticeCard): string => `${c.rev} ${c.label}`;
  return left.filter((c, i) => !taken.some((o) => o.rev === c.rev) && left.findIndex((o) => key(o) === key(c)) === i);
}
