/** What a published folder says is in force, beside the ledger: of the same history, complete, and of today. */

import {
  actText,
  cardName,
  type DocumentState,
  documentStates,
  type Entry,
  type IssueEntry,
  isPrefix,
  type Ledger,
} from '../../src/control/index.ts';
import { counted } from './control-words.ts';
import type { Finding, Manifest } from './verify-manifest.ts';

type PublishedDocument = Manifest['documents'][number];

/** The lines from which the folder was published; undefined, with the reason, when it comes from another history. */
export function publishedLines(
  { ledger: published }: Manifest,
  ledger: Ledger,
): { readonly lines: readonly Entry[] } | { readonly finding: Finding } {
  const { entries } = ledger;
  if (isPrefix(published, ledger)) return { lines: entries.slice(0, published.entries) };
  const words =
    entries.length < published.entries
      ? `it was published from ${counted(published.entries, 'line')} of a ledger, and the ledger of this shop has ${entries.length}: the shop’s folder is older than the published one, or it is another shop’s`
      : `it comes from another history: line ${published.entries} of the ledger from which it was published is not the one of this shop`;
  return { finding: { kind: 'ledger', words } };
}

/** Documents in force on the manifest's day, by the lines that it knew: each with its revision and its fingerprints. */
export function documentFindings({ documents, asOf }: Manifest, lines: readonly Entry[]): Finding[] {
  const published = new Map(documents.filter((d) => d.standing === undefined).map((d) => [d.document, d]));
  const findings: Finding[] = [];
  const told = (words: string): void => {
    findings.push({ kind: 'manifest', words });
  };
  for (const state of documentStates(lines, asOf)) {
    const found = published.get(state.doc);
    published.delete(state.doc);
    const current = state.standing === 'in force' ? state.current : undefined;
    if (current === undefined) {
      if (found !== undefined) {
        told(
          `${state.doc} is shown as Rev ${found.revision} in force, and by the ledger it was ${state.standing} on ${asOf}`,
        );
      }
    } else if (found === undefined) {
      told(`${state.doc} Rev ${current.rev} was in force on ${asOf} by the ledger, and the manifest does not name it`);
    } else if (found.revision !== current.rev) {
      told(
        `${state.doc} is shown as Rev ${found.revision}, and by the ledger Rev ${current.rev} was in force on ${asOf}`,
      );
    } else {
      for (const words of cardFindings(found, current)) told(words);
    }
  }
  for (const [doc, { revision }] of published) {
    told(`${doc} Rev ${revision} is shown as in force, and by the ledger it was never issued`);
  }
  return findings;
}

function cardFindings({ variants }: PublishedDocument, issue: IssueEntry): readonly string[] {
  const shown = new Map(variants.map((v) => [v.variant, v]));
  const name = (variant: string): string => `${cardName(issue.doc, variant)} Rev ${issue.rev}`;
  const words = issue.cards.flatMap(({ variant, fingerprint, path }) => {
    const found = shown.get(variant);
    shown.delete(variant);
    if (found === undefined) return [`the card ${name(variant)} was issued, and the manifest does not name it`];
    if (found.fingerprint !== fingerprint) {
      return [`the card ${name(variant)} has the fingerprint ${found.fingerprint}, and ${fingerprint} was issued`];
    }
    return found.path === `${path}/`
      ? []
      : [`the card ${name(variant)} has the address ${found.path}, and ${path}/ was issued`];
  });
  return [...words, ...[...shown.keys()].map((variant) => `the card ${name(variant)} was not issued`)];
}

/** What mechanics would see otherwise if the folder were published now; empty when it is of today. */
export function outOfDate({ asOf }: Manifest, lines: readonly Entry[], { entries }: Ledger, today: string): Finding[] {
  // A folder for a day that is still to come is looked at as of its own day.
  const now = new Map(documentStates(entries, today > asOf ? today : asOf).map((s) => [s.doc, s]));
  const then = new Map(documentStates(lines, asOf).map((s) => [s.doc, s]));
  return [...now].flatMap(([doc, state]): Finding[] => {
    const before = then.get(doc);
    const shown = before === undefined ? 'nothing' : standingWords(before);
    const present = standingWords(state);
    return shown === present
      ? []
      : [{ kind: 'out of date', words: `${doc}: the folder shows ${shown}, and now it is ${present}` }];
  });
}

function standingWords({ standing, current, coming, temporaries }: DocumentState): string {
  const rev = current === undefined ? '' : ` Rev ${current.rev}`;
  if (standing === 'suspended' || standing === 'withdrawn') return `${standing}`;
  const changes = temporaries.length === 0 ? '' : ` with ${temporaries.map((t) => t.number).join(', ')}`;
  const next = coming.length === 0 ? '' : `, Rev ${coming.map((i) => i.rev).join(', ')} not yet effective`;
  return `${standing}${rev}${changes}${next}`.replace(/^not yet effective, /, '');
}

/** One sentence about the lines that came after the folder was published. */
export function sinceWords(lines: readonly Entry[], { entries }: Ledger): string | undefined {
  const since = entries.slice(lines.length);
  if (since.length === 0) return undefined;
  const named = since.slice(0, 5).map(actText);
  const more = since.length > named.length ? `; and ${since.length - named.length} more` : '';
  return `the folder is older than the ledger: ${counted(since.length, 'line')} came after it (${named.join('; ')}${more})`;
}
