/** Tightening orders that stand in a published table. */

/** Up to 28 bolts the table names single bolts, and `spreadOrder` gives the same; from 36 it names groups of neighbours. */
export interface PublishedOrder {
  readonly count: number;
  readonly source: string;
  /** Neighbours in a group; 1 for single bolts. */
  readonly groupSize: number;
  /** Groups in order, from 1; absent where the rule for fours gives the order. */
  readonly groups?: readonly number[];
}

const READ = 'ASME PCC-1-2019 Table 3, legacy cross pattern';
/** Entered from memory; consistency checked by computation. */
const MEMORY = 'ASME PCC-1 (2010, 2013) legacy cross-pattern table (memory)';

const TWELVE_GROUPS = [1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12];
/** 52 bolts are left out: what is remembered of that row is not consistent. */
export const PUBLISHED_ORDERS: readonly PublishedOrder[] = [
  ...[4, 8, 12, 16, 20, 24].map((count) => ({ count, source: READ, groupSize: 1 })),
  ...[28, 32].map((count) => ({ count, source: MEMORY, groupSize: 1 })),
  { count: 36, source: MEMORY, groupSize: 3, groups: TWELVE_GROUPS },
  { count: 40, source: MEMORY, groupSize: 4, groups: [1, 6, 4, 9, 2, 7, 5, 10, 3, 8] },
  { count: 44, source: MEMORY, groupSize: 4, groups: TWELVE_GROUPS.slice(0, 11) },
  { count: 48, source: MEMORY, groupSize: 4, groups: TWELVE_GROUPS },
  { count: 56, source: MEMORY, groupSize: 4, groups: [1, 8, 4, 11, 6, 13, 3, 10, 7, 14, 5, 12, 2, 9] },
];
