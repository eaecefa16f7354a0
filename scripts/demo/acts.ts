/** The history of the demo's ledger, day by day. */

export type DemoAct =
  | { readonly do: 'issue'; readonly doc: string }
  | { readonly do: 'temporary'; readonly number: string }
  | { readonly do: 'suspend'; readonly doc: string; readonly by: string; readonly reason: string }
  | {
      readonly do: 'reinstate';
      readonly doc: string;
      readonly by: string;
      readonly approver: string;
      readonly reason: string;
    }
  | {
      readonly do: 'withdraw';
      readonly doc: string;
      readonly by: string;
      readonly approver: string;
      readonly effective: string;
      readonly replacement: string;
      readonly reason: string;
    }
  | { readonly do: 'review'; readonly doc: string; readonly by: string; readonly finding: string }
  /** Every bench that has an open notice of the document signs for it, but for those named. */
  | { readonly do: 'receipts'; readonly doc: string; readonly but?: readonly string[] };

export interface DemoDay {
  readonly on: string;
  readonly acts: readonly DemoAct[];
}

/** Documents that hung on the wall when the ledger was begun. */
const BEGUN = [
  'OF-109',
  'OF-117',
  'OF-131',
  'OF-142',
  'OF-155',
  'OF-163',
  'OF-170',
  'OF-184',
  'OF-204',
  'OF-212',
  'OF-221',
  'OF-233',
  'OF-240',
  'OF-251',
  'OF-262',
] as const;

const issue = (doc: string): DemoAct => ({ do: 'issue', doc });
const receipts = (doc: string, but?: readonly string[]): DemoAct => ({
  do: 'receipts',
  doc,
  ...(but === undefined ? {} : { but }),
});

export const DAYS: readonly DemoDay[] = [
  { on: '2025-09-01', acts: BEGUN.map(issue) },
  { on: '2025-09-03', acts: BEGUN.map((doc) => receipts(doc)) },
  { on: '2025-10-20', acts: [issue('OF-212')] },
  { on: '2025-11-04', acts: [receipts('OF-212')] },
  { on: '2025-11-17', acts: [issue('OF-251')] },
  { on: '2025-12-02', acts: [receipts('OF-251')] },
  { on: '2026-01-05', acts: [issue('OF-163')] },
  { on: '2026-01-20', acts: [receipts('OF-163')] },
  { on: '2026-02-02', acts: [issue('OF-221')] },
  { on: '2026-02-16', acts: [issue('OF-204')] },
  { on: '2026-02-18', acts: [receipts('OF-221')] },
  {
    on: '2026-02-23',
    acts: [
      {
        do: 'review',
        doc: 'OF-142',
        by: 'shaft-fitter',
        finding: 'Walked through at the shaft of MV Guillemot with a fitter who had not written it: nothing to change',
      },
    ],
  },
  { on: '2026-03-03', acts: [receipts('OF-204')] },
  { on: '2026-04-27', acts: [issue('OF-233')] },
  { on: '2026-05-12', acts: [receipts('OF-233')] },
  { on: '2026-05-25', acts: [issue('OF-170')] },
  { on: '2026-06-09', acts: [receipts('OF-170')] },
  { on: '2026-06-29', acts: [{ do: 'temporary', number: 'TC-01' }] },
  { on: '2026-06-30', acts: [receipts('OF-221')] },
  {
    on: '2026-07-13',
    acts: [
      {
        do: 'suspend',
        doc: 'OF-233',
        by: 'rigger',
        reason: 'Gauge jack found with a leaking valve: its readings cannot be trusted',
      },
      receipts('OF-233'),
    ],
  },
  {
    on: '2026-07-20',
    acts: [
      {
        do: 'reinstate',
        doc: 'OF-233',
        by: 'rigger',
        approver: 'shop-lead',
        reason: 'Jack repaired, tried against the load cell and sealed; card unchanged',
      },
      receipts('OF-233'),
    ],
  },
  {
    on: '2026-08-10',
    acts: [
      {
        do: 'withdraw',
        doc: 'OF-109',
        by: 'heat-fitter',
        approver: 'quality-lead',
        effective: '2026-08-17',
        replacement: 'OF-131',
        reason: 'The main of MV Tern was renewed with the same flanges as in the other ships',
      },
    ],
  },
  { on: '2026-08-18', acts: [receipts('OF-109')] },
  { on: '2026-08-31', acts: [issue('OF-240')] },
  // The change had run out on 27 August.
  { on: '2026-09-01', acts: [receipts('OF-221')] },
  { on: '2026-09-15', acts: [receipts('OF-240')] },
  { on: '2026-09-28', acts: [issue('OF-184')] },
  { on: '2026-10-19', acts: [issue('OF-262')] },
  { on: '2026-10-27', acts: [receipts('OF-262')] },
  { on: '2026-11-09', acts: [{ do: 'temporary', number: 'TC-02' }] },
  { on: '2026-11-10', acts: [receipts('OF-170')] },
  {
    on: '2026-11-19',
    acts: [
      {
        do: 'suspend',
        doc: 'OF-155',
        by: 'shaft-fitter',
        reason:
          'The induction heater overshot by 15 degrees on two bearings: nothing is heated until its probe has been renewed and checked',
      },
    ],
  },
  { on: '2026-11-20', acts: [receipts('OF-155')] },
  { on: '2026-11-23', acts: [issue('OF-131')] },
];
