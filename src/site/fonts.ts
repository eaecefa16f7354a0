/** Makes the web fonts: subsets of the card faces, so that page and card are set in the same hand. */

import subsetFont from 'subset-font';
import { type FaceName, readFontFiles } from '../source/font-files.ts';

function span(from: number, to: number): string {
  let text = '';
  for (let code = from; code <= to; code++) text += String.fromCodePoint(code);
  return text;
}

/** ASCII, Latin-1, Latin Extended-A, the Greek of units and formulas, dashes and quotes, arrows, fractions, signs of the trade. */
const TEXT =
  span(0x20, 0x7e) +
  span(0xa0, 0x17f) +
  '\u03b1\u03b4\u03bc\u03c0\u03c3\u03c4\u03c6\u03c9\u03a9\u2010\u2011\u2012\u2013\u2014\u2018\u2019\u201a\u201c\u201d\u201e\u2020\u2022\u2026\u202f\u2032\u2033' +
  '\u2039\u203a\u2044\u2070\u2074\u2075\u2076\u2077\u2078\u2079\u207b\u2080\u2081\u2082\u2083\u20ac\u2126' +
  '\u2153\u2154\u215b\u215c\u215d\u215e\u2190\u2191\u2192\u2193\u2194\u2195\u2212\u221a\u221e\u2248\u2260\u2264\u2265\u2610\u2611';

/** What Source Sans 3 lacks: diameter, warning triangle, empty set, turning arrows, circled digits, geometric marks, tick. */
const SIGNS = `\u2300\u26a0\u2205\u21ba\u21bb\u25a0\u25a1\u25b2\u25b6\u25bc\u25c0\u25cb\u25cf\u2713\u2717${span(0x2460, 0x2473)}`;

/** Face name (file stem in `fonts/`) to the card face and the characters that it is cut down to. */
const WEB_FACES: Readonly<Record<string, { readonly face: FaceName; readonly text: string }>> = {
  'source-sans-400': { face: 'regular', text: TEXT },
  'source-sans-600': { face: 'semibold', text: TEXT },
  'source-sans-700': { face: 'bold', text: TEXT },
  signs: { face: 'fallback', text: SIGNS },
};

let made: Promise<Readonly<Record<string, string>>> | undefined;

/** WOFF2 files in base64 by face name; about 30 kB a text face, the same bytes every time, made once a process. */
export function makeSiteFonts(): Promise<Readonly<Record<string, string>>> {
  made ??= subsetAll();
  return made;
}

async function subsetAll(): Promise<Readonly<Record<string, string>>> {
  const files = readFontFiles();
  const fonts: Record<string, string> = {};
  for (const [name, { face, text }] of Object.entries(WEB_FACES)) {
    const woff2 = await subsetFont(files[face], text, { targetFormat: 'woff2', noHinting: true });
    fonts[name] = Buffer.from(woff2).toString('base64');
  }
  return fonts;
}
