/** Reads the designation of a standard pipe flange, in any of its usual spellings. */

import type { Parsed } from '../units/index.ts';
import { ASME_SIZES } from './flange-asme.ts';
import { EN_SIZES } from './flange-en.ts';
import type { Flange } from './flange-type.ts';
import { foldSigns } from './fold.ts';
import { named, nearestNumbers } from './nearest.ts';

const NPS = String.raw`(?:NPS\s*)?(\d+[\s-]+\d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?)\s*(?:"|INCH\b|IN\b\.?)?`;
const CLASS = String.raw`(?:CL(?:ASS|\.)?\s*(\d+)(?:\s*(?:#|LBS?\b))?|(\d+)\s*(?:#|LBS?\b))`;
const SIZE_FIRST = new RegExp(String.raw`^${NPS}[\s,/-]*${CLASS}$`);
const CLASS_FIRST = new RegExp(String.raw`^${CLASS}[\s,/-]+${NPS}$`);
const DN_FIRST = /^DN\s*(\d+)[\s,/-]*PN\s*(\d+(?:\.\d+)?)$/;
const PN_FIRST = /^PN\s*(\d+(?:\.\d+)?)[\s,/-]*DN\s*(\d+)$/;
const HOW = 'write it like `EN 1092-1 DN 100 PN 16` or `ASME B16.5 NPS 4 class 150`';

/**
 * Reads `EN 1092-1 DN 100 PN 16`, `DN100 PN16`, `ASME B16.5 NPS 4 class 150`, `NPS 4 CL150`, `4 in 150#`, `1½" 300 lb`.
 * A size or rating that is not listed is refused with the nearest, another standard with the two known here.
 */
export function parseFlange(text: string): Parsed<Flange> {
  const folded = fold(text);
  const other = /^(?:EN\s*1092-[2-9]|ASME\s*B16\.(?!5\b)\d+|AWWA|JIS|BS|DIN|ISO)\b/.exec(folded)?.[0];
  if (other !== undefined) {
    return refuse(
      `\`${text}\` is a flange to a standard that is not known here`,
      `known: EN 1092-1 and ASME B16.5; ${HOW}`,
    );
  }
  const bare = folded.replace(/^(?:EN\s*1092(?:-1)?|(?:ASME|ANSI)(?:\s*\/\s*ANSI)?(?:\s*B16\.5)?|B16\.5)[\s,:]*/, '');
  const dnFirst = DN_FIRST.exec(bare);
  if (dnFirst !== null) return findEn(text, Number(dnFirst[1]), Number(dnFirst[2]));
  const pnFirst = PN_FIRST.exec(bare);
  if (pnFirst !== null) return findEn(text, Number(pnFirst[2]), Number(pnFirst[1]));
  const sizeFirst = SIZE_FIRST.exec(bare);
  if (sizeFirst !== null) return findAsme(text, sizeFirst[1] ?? '', Number(sizeFirst[2] ?? sizeFirst[3]));
  const classFirst = CLASS_FIRST.exec(bare);
  if (classFirst !== null) return findAsme(text, classFirst[3] ?? '', Number(classFirst[1] ?? classFirst[2]));
  return refuse(`\`${text}\` is not the designation of a flange`, HOW);
}

/** One spelling for vulgar fractions, dashes and inch marks; capitals; single spaces; the word flange dropped. */
function fold(text: string): string {
  return foldSigns(text)
    .toUpperCase()
    .replace(/\bFLANGES?\b/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();
}

function findEn(text: string, dn: number, pn: number): Parsed<Flange> {
  const found = EN_SIZES.find((s) => s.dn === dn && s.pn === pn);
  if (found !== undefined) return { ok: true, value: found.flange };
  const ofPn = EN_SIZES.filter((s) => s.pn === pn);
  if (ofPn.length === 0) {
    const near = nearestNumbers(pn, [...new Set(EN_SIZES.map((s) => s.pn))]).map((n) => `PN ${n}`);
    return refuse(`\`${text}\` has a pressure rating that is not listed here`, `nearest: ${named(near)}`);
  }
  const near = nearestNumbers(
    dn,
    ofPn.map((s) => s.dn),
  ).map((n) => `DN ${n}`);
  return refuse(`\`${text}\` has a size that is not listed for PN ${pn}`, `nearest: ${named(near)}`);
}

function findAsme(text: string, nps: string, pressureClass: number): Parsed<Flange> {
  const value = inches(nps);
  const ofClass = ASME_SIZES.filter((s) => s.pressureClass === pressureClass);
  const found = ofClass.find((s) => Math.abs(inches(s.nps) - value) < 1e-6);
  if (found !== undefined) return { ok: true, value: found.flange };
  if (ofClass.length === 0) {
    const near = nearestNumbers(pressureClass, [...new Set(ASME_SIZES.map((s) => s.pressureClass))]);
    return refuse(
      `\`${text}\` has a class that is not listed here`,
      `nearest: ${named(near.map((n) => `class ${n}`))}`,
    );
  }
  const sizes = new Map(ofClass.map((s) => [inches(s.nps), s.nps]));
  const near = nearestNumbers(value, [...sizes.keys()]).map((n) => `NPS ${sizes.get(n) ?? ''}`);
  return refuse(`\`${text}\` has a size that is not listed for class ${pressureClass}`, `nearest: ${named(near)}`);
}

/** Inches of `1 1/2`, `1-1/2`, `3/4`, `4`. */
function inches(text: string): number {
  return text.split(/[\s-]+/).reduce((sum, part) => {
    const [top = '', bottom = '1'] = part.split('/');
    return sum + Number(top) / Number(bottom);
  }, 0);
}

function refuse(problem: string, hint: string): Parsed<never> {
  return { ok: false, problem, hint };
}
