/** Which card bears a fingerprint, and whether it may be used: for one that was typed in from the foot of a card. */

import { cardStanding, documentStates, type Ledger } from '../../src/control/index.ts';
import { nearest } from '../../src/diagnostics/index.ts';
import type { ResolvedShop } from '../../src/resolve/index.ts';
import { UsageFault } from './faults.ts';

interface Bearer {
  readonly fingerprint: string;
  readonly words: string;
}

/** Eight digits of 0 to 9 and A to F. Blanks and hyphens are passed over; the letter O is read as nought. */
export function typedFingerprint(given: string): string {
  const text = given.toUpperCase().replace(/[\s-]/g, '').replaceAll('O', '0');
  if (/^[0-9A-F]{8}$/.test(text)) return text;
  throw new UsageFault(
    `\`${given}\` is no fingerprint`,
    'it stands at the foot of the card: eight signs, each 0 to 9 or A to F, such as 1A2B3C4D',
  );
}

export interface FingerprintAnswer {
  readonly known: boolean;
  readonly lines: readonly string[];
}

/** today: the day on which the card is looked at. */
export function answerFingerprint(
  fingerprint: string,
  { entries }: Ledger,
  shop: ResolvedShop,
  today: string,
): FingerprintAnswer {
  const all = [...issued(entries, today), ...drafts(entries, shop)];
  const found = all.filter((b) => b.fingerprint === fingerprint);
  if (found.length > 0) return { known: true, lines: found.map((b) => `${fingerprint}: ${b.words}`) };
  const near = nearest(
    fingerprint,
    all.map((b) => b.fingerprint),
  );
  return {
    known: false,
    lines: [
      `${fingerprint}: no card of this shop bears it. Do not use the card.`,
      ...(near === undefined ? [] : [`  there is a card with ${near}: read the fingerprint once more, sign by sign`]),
    ],
  };
}

function issued(entries: Ledger['entries'], today: string): readonly Bearer[] {
  return documentStates(entries, today).flatMap((state) =>
    state.issues.flatMap((issue) => {
      const standing = cardStanding(state, issue);
      const use = {
        current: 'current: it may be used',
        superseded: `superseded${state.current === undefined ? '' : ` by Rev ${state.current.rev}`}: take it out`,
        'not yet effective': `not yet effective: it holds from ${issue.effective} on`,
        suspended: `suspended: do not use it (${state.suspended?.reason ?? ''})`,
        withdrawn: `withdrawn: do not use it${state.withdrawn?.replacement === undefined ? '' : `, use ${state.withdrawn.replacement}`}`,
      }[standing];
      return issue.cards.map(({ fingerprint, label }) => ({
        fingerprint,
        words: `${issue.doc} Rev ${issue.rev}${label === '' ? '' : `, ${label}`}, ${issue.title}. As of ${today} it is ${use}`,
      }));
    }),
  );
}

/** A draft that was printed bears a fingerprint as well; once it is issued as it is, it is the issue's. */
function drafts(entries: Ledger['entries'], { documents }: ResolvedShop): readonly Bearer[] {
  const known = new Set(entries.flatMap((e) => (e.kind === 'issue' ? e.cards.map((c) => c.fingerprint) : [])));
  return documents.flatMap((d) =>
    d.variants
      .filter((v) => !known.has(v.fingerprint))
      .map((v) => ({
        fingerprint: v.fingerprint,
        words: `${d.doc}${v.label === '' ? '' : `, ${v.label}`}, ${d.title}. It is a draft that was not issued: do not use it`,
      })),
  );
}
