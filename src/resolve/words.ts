/** Small matters of wording that every output shares. */

/** First letter in upper case, for headings and list entries; register names are written as in mid-sentence. */
export function capitalised(text: string): string {
  const [first = ''] = text;
  return first.toLocaleUpperCase('en') + text.slice(first.length);
}

/** `a, b and c` */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** A whole number at the start of a place on a dial is a clock position: `12` becomes `12 o'clock`. */
export function placeName(place: number | string): string {
  return typeof place === 'number' ? `${place} o’clock` : place;
}
