/** Days as text, `2026-03-02`, which sorts as it reads. */

const DAY_MS = 86_400_000;

/** Whether the text names a day that the calendar has. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const ms = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(ms) && new Date(ms).toISOString().startsWith(text);
}

export function addDays(day: string, count: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + count * DAY_MS).toISOString().slice(0, 10);
}

/** Days from one to the other; negative when `to` comes first. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}

/** A day plus an interval such as `24 months` or `2 years`; a day that the month lacks becomes its last one. */
export function addInterval(day: string, interval: string): string | undefined {
  const match = /^(\d{1,3}) (month|year)s?$/u.exec(interval);
  const [year, month, date] = day.split('-').map(Number);
  if (match === null || year === undefined || month === undefined || date === undefined) return undefined;
  const index = year * 12 + (month - 1) + Number(match[1]) * (match[2] === 'year' ? 12 : 1);
  const last = new Date(Date.UTC(Math.floor(index / 12), (index % 12) + 1, 0)).getUTCDate();
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${Math.floor(index / 12)}-${two((index % 12) + 1)}-${two(Math.min(date, last))}`;
}
