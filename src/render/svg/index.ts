/** SVG: drawings as markup for pages. */
export { escapeXml } from './escape.ts';
export { paintSvg, type SvgOptions } from './paint-svg.ts';
