/** The square symbol that a phone reads: its modules, and the rows of dark modules as rectangles. */

import QRCode from 'qrcode';
import { isAlphanumeric } from '../../layout/card/index.ts';

export { QUIET_MODULES } from '../../layout/card/index.ts';

export interface QrSymbol {
  /** What it says. */
  readonly text: string;
  /** Modules on a side, without the light margin. */
  readonly size: number;
  /** Runs of dark modules, row by row: whole modules from the left and top edge. */
  readonly runs: readonly { readonly x: number; readonly y: number; readonly length: number }[];
}

const known = new Map<string, QrSymbol>();
const MOST_KNOWN = 5000;

/**
 * The symbol of `text` at error level Q (25 % of it may be lost to oil and scratches). Text of the alphanumeric set (capitals,
 * digits, space $ % * + - . / :) makes the smaller symbol; an address below a folder in small letters is set in bytes.
 */
export function qrSymbol(text: string): QrSymbol {
  const found = known.get(text);
  if (found !== undefined) return found;
  const { modules } = QRCode.create(
    isAlphanumeric(text)
      ? [{ data: text, mode: 'alphanumeric' }]
      : [{ data: new TextEncoder().encode(text), mode: 'byte' }],
    { errorCorrectionLevel: 'Q' },
  );
  const runs: { x: number; y: number; length: number }[] = [];
  for (let y = 0; y < modules.size; y++) {
    let start = -1;
    for (let x = 0; x <= modules.size; x++) {
      const dark = x < modules.size && modules.get(y, x) === 1;
      if (dark && start < 0) start = x;
      if (!dark && start >= 0) {
        runs.push({ x: start, y, length: x - start });
        start = -1;
      }
    }
  }
  const symbol: QrSymbol = { text, size: modules.size, runs };
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(text, symbol);
  return symbol;
}
