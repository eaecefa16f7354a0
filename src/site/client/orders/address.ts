/** The jobs of an order in the address of its page: `?OF-204-LARGE=3&OF-170=2`. */

/** Most jobs of one card; beyond it a number is a slip. */
export const MOST_JOBS = 999;
/** Unknown names that are shown; an address may hold any number of them. */
const MOST_SHOWN = 3;

export interface AddressFault {
  readonly problem: string;
  readonly hint: string;
}

export interface DecodedJobs {
  /** Jobs by card name, each 1 or more. */
  readonly jobs: ReadonlyMap<string, number>;
  readonly faults: readonly AddressFault[];
}

/** Reads a number of jobs: a whole number from 0 to `MOST_JOBS`, nothing for 0; undefined for anything else. */
export function readCount(text: string): number | undefined {
  const trimmed = text.trim();
  if (trimmed === '') return 0;
  if (!/^\d{1,6}$/u.test(trimmed)) return undefined;
  const count = Number(trimmed);
  return count <= MOST_JOBS ? count : undefined;
}

/** The query of the address, without `?`, in the order of the cards; cards without a job are left out. */
export function encodeJobs(jobs: ReadonlyMap<string, number>, cards: readonly string[]): string {
  const query = new URLSearchParams();
  for (const card of cards) {
    const count = jobs.get(card) ?? 0;
    if (count > 0) query.append(card, String(count));
  }
  return query.toString();
}

/** Reads a query with or without `?`. Never throws; what cannot be taken is named and left out. */
export function decodeJobs(query: string, cards: ReadonlySet<string>): DecodedJobs {
  const params = new URLSearchParams(query);
  const jobs = new Map<string, number>();
  const faults: AddressFault[] = [];
  const unknown = [...new Set(params.keys())].filter((key) => !cards.has(key));
  for (const key of unknown.slice(0, MOST_SHOWN)) {
    faults.push({ problem: `no card is called \`${short(key)}\``, hint: 'it may have been withdrawn; it is left out' });
  }
  if (unknown.length > MOST_SHOWN) {
    const more = unknown.length - MOST_SHOWN;
    faults.push({ problem: `the address names ${more} more that are no cards`, hint: 'they are left out' });
  }
  for (const card of cards) {
    const [text, ...more] = params.getAll(card);
    if (text === undefined) continue;
    const count = readCount(text);
    if (count === undefined) {
      faults.push({
        problem: `\`${short(text)}\` is no number of jobs for ${card}`,
        hint: `give a whole number from 0 to ${MOST_JOBS}`,
      });
    } else if (count > 0) jobs.set(card, count);
    if (more.length > 0)
      faults.push({ problem: `the address names ${card} more than once`, hint: 'the first is used' });
  }
  return { jobs, faults };
}

function short(text: string): string {
  return text.length <= 40 ? text : `${text.slice(0, 40)}…`;
}
