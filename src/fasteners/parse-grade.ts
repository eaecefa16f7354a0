/** Reads the name of a property class or grade, in any of its usual spellings. */

import type { Parsed } from '../units/index.ts';
import { foldGrade, type Grade, KNOWN_GRADES, type KnownGrade } from './grade.ts';
import { named, nearestWords } from './nearest.ts';

const BY_ALIAS: ReadonlyMap<string, KnownGrade> = new Map(
  KNOWN_GRADES.flatMap((grade) => grade.aliases.map((alias) => [alias, grade] as const)),
);

/**
 * Reads `8.8`, `A4-80`, `SAE J429 Grade 5`, `grade 5`, `ASTM A193 B7`, `B7`, `A574`, `F593C`.
 * A name that fits several grades (`B8`, without its class) is refused with those named; an unknown one with the nearest.
 */
export function parseGrade(text: string): Parsed<Grade> {
  const folded = foldGrade(text);
  const found = BY_ALIAS.get(folded);
  if (found !== undefined) return { ok: true, value: { id: found.id, standard: found.standard } };
  const begun = folded.length < 2 ? [] : ids([...BY_ALIAS.keys()].filter((alias) => mayMean(alias, folded)));
  if (begun.length > 0) {
    return {
      ok: false,
      problem: `\`${text}\` does not name one grade`,
      hint: `say which: ${named(begun.slice(0, 4))}`,
    };
  }
  const bare = BY_ALIAS.get(`sae${folded}`);
  const near = bare === undefined ? ids(nearestWords(folded, [...BY_ALIAS.keys()])) : [bare.id];
  const hint =
    near.length > 0
      ? `did you mean ${near.map((id) => `\`${id}\``).join(' or ')}? the mark on the part says which`
      : 'known: ISO 898-1 (`8.8`), ISO 3506-1 (`A2-70`), SAE J429 (`SAE 5`), `ASTM A193 B7` and its like, A320, A449, A574, F593';
  return { ok: false, problem: `\`${text}\` is not a property class or grade known here`, hint };
}

/** `B8` is the beginning of `B8 class 2`; `F593 CW1` leaves out its alloy group. */
function mayMean(alias: string, folded: string): boolean {
  return alias.startsWith(folded) || alias.replace(/group\d/, '') === folded;
}

function ids(aliases: readonly string[]): readonly string[] {
  return [...new Set(aliases.map((alias) => BY_ALIAS.get(alias)?.id ?? alias))];
}
