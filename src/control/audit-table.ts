/** A list of the audit pack, written once for the CSV file and for the paper, so that the two cannot part. */

import { csvText } from '../lists/csv.ts';
import type { ResolvedShop } from '../resolve/types.ts';

export interface AuditTable<Key extends string = string> {
  /** Name of its file without the ending: `change-records`. */
  readonly name: string;
  readonly title: string;
  /** One sentence: what the list holds and in which order. */
  readonly says: string;
  /** Stands in its place on paper when it has no row. */
  readonly empty: string;
  /** Key and head of each column, in the order of the file. */
  readonly columns: readonly (readonly [Key, string])[];
  readonly rows: readonly Readonly<Record<Key, string>>[];
}

/** Stands between the parts of a cell that holds several. */
export const BETWEEN = '; ';

/** The list as CSV (RFC 4180, UTF-8), its heads in the first row. */
export function tableCsv(table: AuditTable): string {
  return csvText([
    table.columns.map(([, head]) => head),
    ...table.rows.map((row) => table.columns.map(([key]) => row[key] ?? '')),
  ]);
}

/** Names behind the ids of a shop; an id that no register knows stands for itself. */
export interface Names {
  readonly person: (id: string | undefined) => string;
  readonly bench: (id: string) => string;
}

export function namesOf(shop: Pick<ResolvedShop, 'people' | 'benches'>): Names {
  const people = new Map(shop.people.map((p) => [p.id, p.name]));
  const benches = new Map(shop.benches.map((b) => [b.id, b.name]));
  return {
    person: (id) => (id === undefined ? '' : (people.get(id) ?? id)),
    bench: (id) => benches.get(id) ?? id,
  };
}

/** `3 days`, `1 day` */
export function days(count: number): string {
  return count === 1 ? '1 day' : `${count} days`;
}
