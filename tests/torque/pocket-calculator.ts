/** Works out a printed line as somebody with a pocket calculator would: a reader of its own, apart from the program's. */

const EXPONENTS: Readonly<Record<string, number>> = { '²': 2, '³': 3 };

/**
 * Value of a line such as `√(423.9² + 3 × 137.2²)`. named: values of letters, for lines without numbers.
 * Throws RangeError on a sign that no calculator has.
 */
export function workOut(line: string, named: ReadonlyMap<string, number> = new Map()): number {
  const tokens = line.match(/[\d.]+|[×/+−()√²³°]|[^\s\d.×/+−()√²³°][^\s×/+−()√²³°]*/gu) ?? [];
  let at = 0;
  const take = (wanted: string): boolean => {
    if (tokens[at] !== wanted) return false;
    at++;
    return true;
  };
  const must = (wanted: string): void => {
    if (!take(wanted)) throw new RangeError(`\`${wanted}\` expected at ${at} in ${line}`);
  };

  function sum(): number {
    let total = take('−') ? -product() : product();
    for (;;) {
      if (take('+')) total += product();
      else if (take('−')) total -= product();
      else return total;
    }
  }
  function product(): number {
    let total = raised();
    for (;;) {
      if (take('×')) total *= raised();
      else if (take('/')) total /= raised();
      else return total;
    }
  }
  function raised(): number {
    const base = atom();
    const exponent = EXPONENTS[tokens[at] ?? ''];
    if (exponent === undefined) return base;
    at++;
    return base ** exponent;
  }
  function fenced(): number {
    must('(');
    const inside = sum();
    must(')');
    return inside;
  }
  function atom(): number {
    if (tokens[at] === '(') return fenced();
    if (take('√')) return Math.sqrt(fenced());
    if (take('π')) return Math.PI;
    if (take('cos')) return Math.cos((fenced() * Math.PI) / 180);
    const token = tokens[at++] ?? '';
    const known = named.get(token);
    const value = known ?? (/^[\d.]+$/u.test(token) ? Number(token) : Number.NaN);
    if (Number.isNaN(value)) throw new RangeError(`\`${token}\` in ${line} is no number`);
    take('°');
    return value;
  }

  const value = sum();
  if (at !== tokens.length) throw new RangeError(`${line} goes on after its end: ${tokens.slice(at).join(' ')}`);
  return value;
}

/** The number of a printed result: `68.15 kN`. */
export function printedNumber(result: string): number {
  return Number.parseFloat(result.replace('−', '-'));
}
