/** Makes any text safe to stand in HTML, as content or inside a quoted attribute: XML's escaping is safe for both. */
export { escapeXml as escapeHtml } from '../svg/index.ts';
