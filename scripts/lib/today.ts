/** The day of this machine's clock: the only place where a command asks what day it is. */

/** Local, as `2026-03-02`: a change that holds from a day on holds from midnight in the shop. */
export function today(now: Date = new Date()): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
