/** Which card a serial number takes, and what to say of one that takes none. Runs in the browser too. */

export interface SerialRange {
  readonly from: number;
  readonly to: number;
  /** `Large`; empty where the document has one card. */
  readonly label: string;
  /** Page of the card; absent where the document has no card for this range. */
  readonly page?: string;
}

export type SerialAnswer =
  | { readonly kind: 'card'; readonly page: string; readonly text: string }
  | { readonly kind: 'none'; readonly text: string };

/** Ranges that follow each other without a gap are told as one: `1201 to 1290`. */
export function rangesText(ranges: readonly Pick<SerialRange, 'from' | 'to'>[]): string {
  const joined: { from: number; to: number }[] = [];
  for (const { from, to } of [...ranges].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (last !== undefined && from <= last.to + 1) last.to = Math.max(last.to, to);
    else joined.push({ from, to });
  }
  return joined.map((r) => (r.from === r.to ? `${r.from}` : `${r.from} to ${r.to}`)).join(', ');
}

/** written: as typed; letters before the digits are left alone, because plates often carry them. */
export function answerSerial(written: string, ranges: readonly SerialRange[]): SerialAnswer | undefined {
  const text = written.trim();
  if (text === '') return undefined;
  const digits = /^[A-Za-z]*[\s-]?0*(\d{1,12})$/.exec(text)?.[1];
  if (digits === undefined) return { kind: 'none', text: `${text} is not a serial number: type its digits.` };
  const serial = Number(digits);
  const range = ranges.find((r) => r.from <= serial && serial <= r.to);
  if (range === undefined) {
    return {
      kind: 'none',
      text: `Serial ${serial} lies outside every range of this machine (${rangesText(ranges)}). No card here holds for it: stop, and ask before the work begins.`,
    };
  }
  const named = range.label === '' ? '' : `: ${range.label}`;
  if (range.page === undefined) {
    return {
      kind: 'none',
      text: `Serial ${serial}${named}. This document has no card for it: do not use another one.`,
    };
  }
  return { kind: 'card', page: range.page, text: `Serial ${serial}${named}. Open its procedure` };
}
