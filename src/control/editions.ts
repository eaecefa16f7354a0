/** Names and editions of outside documents, compared as people write them. */

/** Case and blanks make no other document. */
export function foldedDocument(name: string): string {
  return name.toLowerCase().replace(/\s+/g, ' ').trim();
}

/** `edition 3`, `3rd edition` and `3` are one; which sheets are meant is a matter of the place. */
export function foldedEdition(text: string): string {
  return foldedDocument(text)
    .replace(/\bsheets? [\d\s,]+(?:(?:to|and) \d+)?/g, ' ')
    .replace(/\b(?:edition|ed|issue|revision|rev|printing|of|the)\b\.?/g, ' ')
    .replace(/\b(\d+)(?:st|nd|rd|th)\b/g, '$1')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

export function isSameEdition(a: string, b: string): boolean {
  return a === b || foldedEdition(a) === foldedEdition(b);
}
