/** Makes any text safe to stand in HTML: as content or inside a double-quoted attribute. */

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Escapes the five characters that mean something to an HTML parser; everything else is left as written. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/gu, (c) => ENTITIES[c] ?? c);
}
