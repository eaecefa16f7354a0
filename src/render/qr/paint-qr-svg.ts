/** The symbol as SVG, with its light margin: always dark on light, whatever the theme of the page. */

import { escapeXml } from '../svg/escape.ts';
import { type QrSymbol, QUIET_MODULES } from './symbol.ts';

/** One SVG element; the view box counts in modules. `label` is read out by screen readers. */
export function paintQrSvg(symbol: QrSymbol, label: string, className?: string): string {
  const side = symbol.size + 2 * QUIET_MODULES;
  const data = symbol.runs
    .map((run) => `M${run.x + QUIET_MODULES} ${run.y + QUIET_MODULES}h${run.length}v1h-${run.length}z`)
    .join('');
  const classes = className === undefined ? '' : ` class="${escapeXml(className)}"`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${side} ${side}" role="img" aria-label="${escapeXml(label)}"${classes}` +
    ` shape-rendering="crispEdges"><path fill="#ffffff" d="M0 0h${side}v${side}h-${side}z"/><path fill="#000000" d="${data}"/></svg>`
  );
}
