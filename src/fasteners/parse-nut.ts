/** Reads the name of a nut's property class or grade, in any of its usual spellings. */

import type { Parsed } from '../units/index.ts';
import { named, nearestWords } from './nearest.ts';
import { FULL_NUT_CLASSES, foldNut, KNOWN_NUTS, type KnownNut, type NutGrade } from './nut-grade.ts';

const BY_ALIAS: ReadonlyMap<string, KnownNut> = new Map(
  KNOWN_NUTS.flatMap((nut) => nut.aliases.map((alias) => [alias, nut] as const)),
);

/**
 * Reads `8`, `class 10`, `04`, `A4-80`, `SAE 5`, `grade 5`, `J995 grade 8`, `2H`, `ASTM A194 Gr. 2H`, `A563 DH`,
 * `F594C`. A bare number is the class of ISO 898-2; the class of a bolt is refused with the nut that goes with it, an
 * unknown name with the nearest.
 */
export function parseNut(text: string): Parsed<NutGrade> {
  const folded = foldNut(text);
  const found = BY_ALIAS.get(folded);
  if (found !== undefined) return { ok: true, value: { id: found.id, standard: found.standard } };
  const boltClass = /^(\d{1,2})\.\d$/.exec(folded)?.[1];
  if (boltClass !== undefined) {
    const least = FULL_NUT_CLASSES.find((c) => Number(c) >= Number(boltClass));
    return {
      ok: false,
      problem: `\`${text}\` is the class of a bolt, not of a nut`,
      hint: least === undefined ? KNOWN : `nuts have one number: \`${least}\` or above goes with that bolt`,
    };
  }
  return { ok: false, problem: `\`${text}\` is not a nut class or grade known here`, hint: hintFor(folded) };
}

const KNOWN =
  'known: ISO 898-2 (`8`, `10`), ISO 3506-2 (`A2-70`), SAE J995 (`SAE 5`), `ASTM A194 2H` and its like, A563 (`ASTM A563 DH`), F594';

function hintFor(folded: string): string {
  // `4` is what is left of an unquoted `04`; `7` and `2` are grades whose standard was left out.
  const meant = [`0${folded}`, `sae${folded}`, `a194${folded}`, `a563${folded}`].flatMap(
    (a) => BY_ALIAS.get(a)?.id ?? [],
  );
  if (folded === '') return KNOWN;
  if (meant.length > 0) return `did you mean ${or(meant)}?`;
  const begun = folded.length < 2 ? [] : ids([...BY_ALIAS.keys()].filter((a) => mayMean(a, folded)));
  if (begun.length > 0) return `say which: ${named(begun.slice(0, 4))}`;
  const near = ids(nearestWords(folded, [...BY_ALIAS.keys()]));
  return near.length > 0 ? `did you mean ${or(near)}?` : KNOWN;
}

/** `a2` is the beginning of `a270`; `f594cw1` leaves out its alloy group. */
function mayMean(alias: string, folded: string): boolean {
  return alias.startsWith(folded) || alias.replace(/group\d/, '') === folded;
}

function or(names: readonly string[]): string {
  return names.map((id) => `\`${id}\``).join(' or ');
}

function ids(aliases: readonly string[]): readonly string[] {
  return [...new Set(aliases.map((alias) => BY_ALIAS.get(alias)?.id ?? alias))];
}
