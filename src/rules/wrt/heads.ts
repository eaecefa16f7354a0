/** Where a pattern of many words may begin: nine words in ten are passed over by their first two letters. */

/** By two letters of ASCII, small ones. */
export type Heads = Uint8Array;

/**
 * First two letters of everything that the patterns match. Each alternative begins with a word of two letters or more, with
 * `a` and a blank, or with a group of such words. Throws a RangeError at any other.
 */
export function heads(patterns: readonly string[]): Heads {
  const made = new Uint8Array(128 * 128);
  const add = (pattern: string): void => {
    for (const alternative of alternatives(pattern)) {
      const group = /^\(\?:/.test(alternative) ? alternative.slice(3, groupEnd(alternative)) : undefined;
      if (group !== undefined) add(group);
      else if (/^(?:[a-z]{2}|a )(?![?*{])/.test(alternative)) made[index(alternative, 0)] = 1;
      else throw new RangeError(`nobody can tell how \`${alternative}\` begins`);
    }
  };
  for (const pattern of patterns) add(pattern);
  return made;
}

/** Where from `from` on a word begins, behind neither letter nor hyphen, with letters among the heads; else the length. */
export function headFrom(heads: Heads, text: string, from: number): number {
  let inside = from > 0 && isInWord(text.charCodeAt(from - 1));
  for (let at = from; at < text.length; at++) {
    const c = text.charCodeAt(at);
    if (!inside && heads[index(text, at)] === 1) return at;
    inside = isInWord(c);
  }
  return text.length;
}

/** Small letters and a blank keep their places; capitals get those of small letters; other signs none that a head has. */
function index(text: string, at: number): number {
  return (small(text.charCodeAt(at)) << 7) | small(text.charCodeAt(at + 1));
}

function small(c: number): number {
  if (c >= 65 && c <= 90) return c + 32;
  return c < 128 ? c : 0;
}

/** `[\w-]` */
function isInWord(c: number): boolean {
  return (c >= 97 && c <= 122) || (c >= 65 && c <= 90) || (c >= 48 && c <= 57) || c === 95 || c === 45;
}

function alternatives(pattern: string): readonly string[] {
  const found: string[] = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at < pattern.length; at++) {
    const c = pattern[at];
    if (c === '\\') at += 1;
    else if (c === '(') depth += 1;
    else if (c === ')') depth -= 1;
    else if (c === '|' && depth === 0) {
      found.push(pattern.slice(from, at));
      from = at + 1;
    }
  }
  return [...found, pattern.slice(from)];
}

/** Where the group at the head of the pattern ends. One that may be left out would hide how the pattern begins. */
function groupEnd(pattern: string): number {
  let depth = 0;
  for (let at = 0; at < pattern.length; at++) {
    const c = pattern[at];
    if (c === '\\') at += 1;
    else if (c === '(') depth += 1;
    else if (c === ')') {
      depth -= 1;
      if (depth > 0) continue;
      if (/[?*{]/.test(pattern[at + 1] ?? '')) break;
      return at;
    }
  }
  throw new RangeError(`nobody can tell how \`${pattern}\` begins`);
}
