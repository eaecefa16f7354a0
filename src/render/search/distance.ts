/** How far apart two words are written. */

/**
 * Number of slips between `a` and `b`: a letter left out, added, changed, or two neighbours swapped (optimal string
 * alignment distance). Swapped letters are the commonest slip of all and count once here.
 */
export function slips(a: string, b: string): number {
  const s = [...a];
  const t = [...b];
  let before: number[] = [];
  let last = Array.from({ length: t.length + 1 }, (_v, j) => j);
  for (let i = 1; i <= s.length; i++) {
    const row = [i];
    for (let j = 1; j <= t.length; j++) {
      const same = s[i - 1] === t[j - 1];
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      const swapped = i > 1 && j > 1 && s[i - 1] === t[j - 2] && s[i - 2] === t[j - 1];
      if (swapped) cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      row.push(cost);
    }
    before = last;
    last = row;
  }
  return last[t.length] ?? 0;
}
