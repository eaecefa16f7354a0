/** The symbol: what it says is read back by a decoder; its size is what the card laid out for it. */

import { describe, expect, test } from 'vitest';
import { LEAST_MODULE_MM, moduleMm, qrModules } from '../../src/layout/card/qr-size.ts';
import { paintQrSvg, QUIET_MODULES, qrSymbol } from '../../src/render/qr/index.ts';
import { scan } from '../cards/read-pdf.ts';

const ADDRESS = 'HTTPS://BINDER.OSFW.EXAMPLE/C/OF-204/B/LARGE/';

async function decode(text: string): Promise<string[]> {
  const symbol = qrSymbol(text);
  const scale = 4;
  const side = (symbol.size + 2 * QUIET_MODULES) * scale;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const run of symbol.runs) {
    for (let y = 0; y < scale; y++) {
      for (let x = 0; x < run.length * scale; x++) {
        const at = (((run.y + QUIET_MODULES) * scale + y) * side + (run.x + QUIET_MODULES) * scale + x) * 4;
        data.fill(0, at, at + 3);
      }
    }
  }
  return scan({ width: side, height: side, data });
}

test('a decoder reads the address back', async () => {
  expect(await decode(ADDRESS)).toEqual([ADDRESS]);
});

test.each([1, 16, 17, 29, 30, 47, 48, 67, 68, 87, 108, 125, 157])(
  '%i characters take the modules that the layout reckons with',
  (length) => {
    const text = ADDRESS.padEnd(200, 'A1B2').slice(0, length);
    expect(qrSymbol(text).size).toBe(qrModules(text));
  },
);

test.each([11, 12, 20, 32, 33, 46, 47, 60, 61, 74])(
  '%i characters with small letters among them take the modules that the layout reckons with',
  (length) => {
    const text = 'HTTPS://MINI.EXAMPLE/binder/'.padStart(200, 'b').slice(-length);
    expect(qrSymbol(text).size).toBe(qrModules(text));
  },
);

test('a decoder reads an address below a folder in small letters, letter by letter', async () => {
  const text = 'HTTPS://MINI.EXAMPLE/binder/C/MW-1/A/';
  expect(await decode(text)).toEqual([text]);
});

test('modules are half a millimetre or more up to 67 characters, and no further', () => {
  expect(moduleMm('A'.repeat(67))).toBeGreaterThanOrEqual(LEAST_MODULE_MM);
  expect(moduleMm('A'.repeat(68))).toBeLessThan(LEAST_MODULE_MM);
  expect(QUIET_MODULES).toBe(4);
});

describe('guards', () => {
  test('the SVG has its light margin and says what it is', () => {
    const svg = paintQrSvg(qrSymbol(ADDRESS), 'Address of <this> card');
    const symbol = qrSymbol(ADDRESS);
    expect(svg).toContain(`viewBox="0 0 ${symbol.size + 8} ${symbol.size + 8}"`);
    expect(svg).toContain('aria-label="Address of &lt;this&gt; card"');
    expect(svg).not.toContain('style=');
    expect(svg.match(/h\d+v1h/gu)?.length).toBe(symbol.runs.length);
  });
});
