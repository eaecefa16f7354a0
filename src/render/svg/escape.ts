/** Escaping for SVG text and attributes: content is somebody's text and must appear as text. */

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text safe in element content and in quoted attributes; characters that XML does not allow become U+FFFD. */
export function escapeXml(text: string): string {
  return text
    .toWellFormed()
    .replace(/[\p{Cc}\ufffe\uffff]/gu, (c) => (c === '\n' || c === '\t' || c === '\r' ? c : '\ufffd'))
    .replace(/[&<>"']/g, (c) => ENTITIES[c] ?? c);
}
