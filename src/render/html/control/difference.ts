/** Old and new text with the words marked that differ, for side by side. */

import { escapeHtml } from '../escape.ts';

/** Longer texts are shown unmarked: the table of common words grows with the product of both lengths. */
const MOST_WORDS = 400;
/** Of two texts that share less than this, every word would be marked. */
const LEAST_SHARED = 0.35;

export interface Marked {
  /** HTML with `<del>`. */
  readonly before: string;
  /** HTML with `<ins>`. */
  readonly after: string;
}

/** Both texts as HTML. Blanks belong to the word before them, so that nothing is lost between the marks. */
export function markDifference(before: string, after: string): Marked {
  const a = words(before);
  const b = words(after);
  if (a.length > MOST_WORDS || b.length > MOST_WORDS) return plain(before, after);
  const { keepA, keepB, shared } = common(a, b);
  if (shared < LEAST_SHARED * Math.max(a.length, b.length)) return plain(before, after);
  return { before: mark(a, keepA, 'del'), after: mark(b, keepB, 'ins') };
}

function plain(before: string, after: string): Marked {
  return { before: escapeHtml(before), after: escapeHtml(after) };
}

function words(text: string): readonly string[] {
  return text.match(/\S+\s*|^\s+/gu) ?? [];
}

/** The longest common run of words, in order: which words of either text belong to it. */
function common(
  a: readonly string[],
  b: readonly string[],
): { readonly keepA: readonly boolean[]; readonly keepB: readonly boolean[]; readonly shared: number } {
  const wide = b.length + 1;
  const left = a.map((word) => word.trimEnd());
  const right = b.map((word) => word.trimEnd());
  /** Length of the longest run within the rest of both texts, from word i and word j on. */
  const length = new Uint16Array((a.length + 1) * wide);
  const at = (i: number, j: number) => length[i * wide + j] ?? 0;
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      length[i * wide + j] = left[i] === right[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
    }
  }
  const keepA = a.map(() => false);
  const keepB = b.map(() => false);
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    if (left[i] === right[j]) {
      keepA[i++] = true;
      keepB[j++] = true;
    } else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  return { keepA, keepB, shared: at(0, 0) };
}

function mark(all: readonly string[], keep: readonly boolean[], tag: 'del' | 'ins'): string {
  let html = '';
  for (let i = 0; i < all.length; ) {
    let j = i;
    while (j < all.length && keep[j] === keep[i]) j++;
    const text = all.slice(i, j).join('');
    // The blank after the last marked word stays outside, or the line through it would reach the next word.
    const bare = text.trimEnd();
    html +=
      keep[i] === true
        ? escapeHtml(text)
        : `<${tag}>${escapeHtml(bare)}</${tag}>${escapeHtml(text.slice(bare.length))}`;
    i = j;
  }
  return html;
}
