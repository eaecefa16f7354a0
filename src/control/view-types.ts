/** What follows from the ledger on a given day, as pages, notices and lists take it. Plain data. */

import type {
  Change,
  ChangeClass,
  IssueEntry,
  ReceiptEntry,
  ReviewEntry,
  SuspendEntry,
  TemporaryEntry,
  WithdrawEntry,
} from './types.ts';

export type CardStanding = 'current' | 'superseded' | 'not yet effective' | 'suspended' | 'withdrawn' | 'draft';

export interface OpenTemporary extends TemporaryEntry {
  /** How many days are left, the last one included. */
  readonly daysLeft: number;
}

export interface DocumentState {
  readonly doc: string;
  /** Of the issue in force, else of the latest. */
  readonly title: string;
  /** Id of its machine, where the snapshot was read: not of withdrawn ones. */
  readonly machine?: string;
  readonly standing: 'in force' | 'not yet effective' | 'suspended' | 'withdrawn' | 'draft only';
  /** All issues in the order of the ledger. */
  readonly issues: readonly IssueEntry[];
  /** In force on the day; kept while suspended. */
  readonly current?: IssueEntry;
  /** Issues whose day has not come. */
  readonly coming: readonly IssueEntry[];
  readonly suspended?: SuspendEntry;
  readonly withdrawn?: WithdrawEntry;
  readonly temporaries: readonly OpenTemporary[];
  readonly reviews: readonly ReviewEntry[];
}

/** What the bench has to do, because of one line of the ledger. */
export interface Notice {
  /** `CN-17`, after the number of the line. */
  readonly number: string;
  readonly cause: 'issue' | 'suspend' | 'reinstate' | 'withdraw' | 'temporary' | 'temporary-end' | 'temporary-expiry';
  readonly doc: string;
  readonly title: string;
  readonly bench: string;
  readonly benchName: string;
  readonly place: string;
  readonly copy: number;
  readonly copies: number;
  readonly class: ChangeClass;
  /** Day on which it is to be done. */
  readonly due: string;
  /** Days that the shop allows for the receipt. */
  readonly limitDays: number;
  readonly takeOut: readonly NoticeCard[];
  readonly putIn: readonly NoticeCard[];
  readonly what: string;
  readonly why: string;
  readonly approver?: string;
  readonly receipt?: ReceiptEntry;
  /** Days since `due`; absent before it. */
  readonly age?: number;
  readonly overdue: boolean;
}

export interface NoticeCard {
  readonly doc: string;
  readonly rev: string;
  readonly label: string;
  readonly sides: number;
  readonly fingerprint: string;
  /** Card file within the published folder; absent for what is taken out. */
  readonly file?: string;
  /** `TC-07`, for a card with temporary changes. */
  readonly with?: readonly string[];
}

/** What the address of a card that is not in force answers. */
export interface Answer {
  /** `C/OF-204/B/LARGE` */
  readonly path: string;
  readonly doc: string;
  readonly slug: string;
  readonly title: string;
  /** Empty for a draft. */
  readonly rev: string;
  readonly label: string;
  readonly fingerprint: string;
  readonly standing: Exclude<CardStanding, 'current'>;
  /** First day on which this revision holds; absent for a draft. */
  readonly effective?: string;
  /** Why it is suspended or withdrawn, and since when. */
  readonly reason?: string;
  readonly since?: string;
  /** Revision to use now, where there is one, with the page of the same variant (or of the document). */
  readonly use?: { readonly doc: string; readonly title: string; readonly rev: string; readonly path: string };
  /** Newer issues up to the one in force, oldest first: what changed. */
  readonly later: readonly {
    readonly rev: string;
    readonly effective: string;
    readonly what: string;
    readonly why: string;
    /** Page of the comparison with the issue before it. */
    readonly compare?: string;
  }[];
}

/** Review of one document. */
export interface ReviewState {
  readonly doc: string;
  readonly title: string;
  readonly owner: string;
  readonly interval: string;
  readonly last: string;
  readonly due: string;
  readonly state: 'overdue' | 'due soon' | 'in order';
}

/** A new edition of an outside document, and what still rests on an older one. */
export interface EditionState {
  readonly id: string;
  readonly document: string;
  readonly kind: string;
  readonly edition: string;
  readonly owner: string;
  readonly kept?: string;
  readonly rests: readonly {
    readonly doc: string;
    readonly title: string;
    /** Edition that the procedure names. */
    readonly edition: string;
    /** Numbers that rest on it: `torque of the end-cover joint 85 N·m (page 31)`. */
    readonly numbers: readonly string[];
    readonly confirmed?: { readonly by: string; readonly on: string; readonly finding: string };
  }[];
}

/** How the draft of a document differs from its latest issue. */
export interface DraftDifference {
  readonly doc: string;
  readonly title: string;
  /** Absent when it was never issued. */
  readonly since?: string;
  /** Revision that the draft asks for. */
  readonly rev: string;
  readonly changes: readonly Change[];
}

/** Everything about control that the published folder shows. */
export interface ControlView {
  readonly asOf: string;
  readonly ledger: { readonly entries: number; readonly head: string; readonly last?: string };
  /** Sorted by number. */
  readonly documents: readonly DocumentState[];
  readonly answers: readonly Answer[];
  /** Not yet answered by a receipt, oldest first; and those answered. */
  readonly open: readonly Notice[];
  readonly received: readonly Notice[];
  readonly reviews: readonly ReviewState[];
  readonly editions: readonly EditionState[];
  readonly drafts: readonly DraftDifference[];
  /** Every printed fingerprint. */
  readonly fingerprints: readonly {
    readonly fingerprint: string;
    readonly doc: string;
    readonly rev: string;
    readonly label: string;
    readonly path: string;
    readonly standing: CardStanding;
  }[];
  /** Neighbouring issues, with their comparison's page `compare/of-204/b-c/`. */
  readonly comparisons: readonly {
    readonly doc: string;
    readonly from: string;
    readonly to: string;
    readonly path: string;
  }[];
}
