/** Every printed card by fingerprint and by address, loaded once when it is first asked for. */

import type { ControlView } from '../../../control/types.ts';

export type PrintedCard = ControlView['fingerprints'][number];

/** Eight digits in capitals, without what stands between them; undefined when it is no fingerprint. */
export function readFingerprint(text: string): string | undefined {
  const digits = text.replace(/[\s\u00a0.:-]/gu, '').toUpperCase();
  return /^[0-9A-F]{8}$/u.test(digits) ? digits : undefined;
}

/** `C/OF-204/B/LARGE` out of an address, a path or what a scanner typed; undefined when no card's path stands in it. */
export function readCardPath(text: string): string | undefined {
  const plain = text.trim().replace(/[?#].*$/u, '');
  const found = /(?:^|\/)(C\/[A-Z0-9._/-]+?)\/?$/iu.exec(plain)?.[1];
  return found?.toUpperCase();
}

/** What a typed text stands for; undefined when no card of the shop bears it. A fingerprint that two cards bear gives both. */
export function findCards(text: string, cards: readonly PrintedCard[]): readonly PrintedCard[] {
  const fingerprint = readFingerprint(text);
  if (fingerprint !== undefined) return cards.filter((c) => c.fingerprint === fingerprint);
  const path = readCardPath(text);
  return path === undefined ? [] : cards.filter((c) => c.path.toUpperCase() === path);
}

let loading: Promise<readonly PrintedCard[]> | undefined;

/** Loads the list; a load that failed may be tried again. Rejects when the list cannot be had. */
export function loadCards(address: string): Promise<readonly PrintedCard[]> {
  loading ??= fetch(address).then(async (answer) => {
    if (!answer.ok) throw new Error(`answer ${answer.status}`);
    return (await answer.json()) as readonly PrintedCard[];
  });
  loading.catch(() => {
    loading = undefined;
  });
  return loading;
}

/** What to do with a card of this standing, in one sentence. */
export function adviceOf(standing: PrintedCard['standing']): string {
  switch (standing) {
    case 'current':
      return 'This card is the one to work from.';
    case 'superseded':
      return 'Take it out. Work from the revision in force.';
    case 'not yet effective':
      return 'Do not work from it before its day.';
    case 'suspended':
      return 'STOP. Do not use any copy of this document.';
    case 'withdrawn':
      return 'Take it out. The document is withdrawn.';
    case 'draft':
      return 'It was printed from a draft. Never work from it.';
  }
}

/** A shape of its own for each standing, so that it is never told by colour alone. */
export const SHAPES: Readonly<Record<PrintedCard['standing'] | 'missing' | 'strange' | 'unknown', string>> = {
  current: '\u2713',
  superseded: '\u2717',
  'not yet effective': '\u25cb',
  suspended: '\u25a0',
  withdrawn: '\u2205',
  draft: '\u25a1',
  missing: '\u25a1',
  strange: '\u25b2',
  unknown: '\u25b2',
};
