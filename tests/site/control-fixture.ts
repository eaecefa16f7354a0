/** The demo shop on one day, with a history made by hand: one of everything that document control can have to say. */

import type {
  ControlView,
  DocumentState,
  IssueEntry,
  Notice,
  OpenTemporary,
  SuspendEntry,
  WithdrawEntry,
} from '../../src/control/types.ts';
import { type CheckedShop, READ_FROM, whereUsed } from '../../src/resolve/index.ts';
import type { Document, Feedback, Revision, Step, TemporaryNote } from '../../src/resolve/types.ts';

export const AS_OF = '2026-11-25';
const HEAD = 'c0ffee00'.repeat(8);
/** What must appear as text and never as markup. */
export const HOSTILE = '<img src=x onerror="window.hit=1">';
/** Standings of the documents that are not in force. */
const SUSPENDED = 'OF-163';
const WITHDRAWN = 'OF-212';
const NOT_YET = 'OF-233';

export interface Controlled {
  readonly shop: CheckedShop;
  readonly control: ControlView;
}

/** Revisions of this test, whatever the demo's own history is: letter to effective date. */
const USUAL = { A: '2020-02-03', B: '2022-05-09', C: '2025-04-07' };
const HISTORIES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'OF-184': { ...USUAL, C: '2026-10-12' },
  'OF-204': { A: '2019-04-01', B: '2021-06-14', C: '2023-09-04', D: '2026-03-02' },
};

/** The document with the history of this test. */
function withHistory(document: Document): Document {
  const revisions = Object.entries(HISTORIES[document.doc] ?? USUAL).map(
    ([rev, effective]): Revision => ({
      ...document.revision,
      rev,
      effective,
      approved: effective,
      class: 'major',
      author: 'heat-fitter',
      approver: 'quality-lead',
      what: `What Rev ${rev} changed`,
      why: `Why Rev ${rev} changed it`,
    }),
  );
  const revision = revisions.at(-1) ?? document.revision;
  const variants = document.variants.map((v) => ({
    ...v,
    path: v.path.replace(`C/${document.doc}/${document.revision.rev}`, `C/${document.doc}/${revision.rev}`),
  }));
  return { ...document, revisions, revision, variants };
}

let seq = 0;
const base = (recorded: string) => ({ seq: ++seq, prev: HEAD, seal: HEAD, recorded });

function issuesOf(document: Document, shop: CheckedShop): IssueEntry[] {
  return document.revisions.map((r, i) => ({
    ...base(r.approved),
    kind: 'issue',
    distribution: shop.benches
      .filter((b) => b.binder.includes(document.doc))
      .map(({ id, copy }) => ({ bench: id, copy })),
    doc: document.doc,
    rev: r.rev,
    title: document.title,
    change: { class: r.class, what: r.what, why: r.why },
    affects: [],
    author: r.author,
    approver: r.approver,
    approved: r.approved,
    effective: r.effective,
    snapshot: { file: `${document.doc}/${r.rev}.json`, sha256: HEAD, format: 1, engine: '0.1.0' },
    ...(i === 0 ? {} : { comparison: { file: `${document.doc}/${r.rev}.compare.json`, sha256: HEAD } }),
    ...(i === document.revisions.length - 1
      ? { signature: { by: r.approver, key: '0123456789abcdef', value: 'AA==' } }
      : {}),
    cards: document.variants.map((v) => ({
      variant: v.key,
      label: v.label,
      path: v.path.replace(`/${document.revision.rev}`, `/${r.rev}`),
      fingerprint: i === document.revisions.length - 1 ? v.fingerprint : `${i}${v.fingerprint.slice(1)}`,
      digest: v.digest,
      sides: 4,
    })),
  }));
}

function stateOf(document: Document, shop: CheckedShop): DocumentState {
  const issues = issuesOf(document, shop);
  const last = issues.at(-1);
  const state = { doc: document.doc, title: document.title, issues, temporaries: [], reviews: [], coming: [] };
  if (document.doc === NOT_YET && last !== undefined) {
    const first = { ...last, effective: '2026-12-05' };
    return { ...state, issues: [first], coming: [first], standing: 'not yet effective' };
  }
  const current = last === undefined ? {} : { current: last };
  if (document.doc === SUSPENDED) return { ...state, ...current, standing: 'suspended', suspended: suspension(last) };
  if (document.doc === WITHDRAWN) return { ...state, ...current, standing: 'withdrawn', withdrawn: withdrawal(last) };
  if (document.doc !== 'OF-204' || last === undefined) return { ...state, ...current, standing: 'in force' };
  const next: IssueEntry = {
    ...last,
    ...base('2026-11-20'),
    rev: 'E',
    effective: '2026-12-01',
    approved: '2026-11-20',
    change: { class: 'major', what: `Torque of the end covers raised ${HOSTILE}`, why: 'Maker’s bulletin' },
    cards: last.cards.map((c) => ({
      ...c,
      path: c.path.replace('/D/', '/E/'),
      fingerprint: `E${c.fingerprint.slice(1)}`,
    })),
  };
  return {
    ...state,
    ...current,
    issues: [...issues, next],
    coming: [next],
    temporaries: [temporary],
    standing: 'in force',
  };
}

const suspension = (last: IssueEntry | undefined): SuspendEntry => ({
  ...base('2026-11-18'),
  kind: 'suspend',
  distribution: last?.distribution ?? [],
  doc: SUSPENDED,
  reason: `A bonnet was released under pressure: the venting step is being looked at. ${HOSTILE}`,
  by: 'quality-lead',
});

const withdrawal = (last: IssueEntry | undefined): WithdrawEntry => ({
  ...base('2026-08-01'),
  kind: 'withdraw',
  distribution: last?.distribution ?? [],
  doc: WITHDRAWN,
  reason: 'The winch was taken out of service.',
  by: 'quality-lead',
  approver: 'shop-lead',
  effective: '2026-08-03',
  replacement: 'OF-251',
});

const temporary: OpenTemporary = {
  ...base('2026-11-10'),
  kind: 'temporary',
  distribution: [{ bench: 'heat-exchange', copy: 1 }],
  number: 'TC-07',
  doc: 'OF-204',
  rev: 'D',
  step: 3,
  text: 'Drain through the **lower** plug.',
  reason: 'the upper drain cock is being renewed',
  scope: { benches: ['heat-exchange'], variants: ['large'], serials: { from: 1001, to: 1040 } },
  author: 'heat-fitter',
  approver: 'quality-lead',
  approved: '2026-11-10',
  from: '2026-11-12',
  until: '2026-12-20',
  daysLeft: 26,
};

/** OF-204 as the build would publish it: with bars, a panel, and the temporary change before its step. */
function changed(document: Document): Document {
  const withMarks = (step: Step, key: string): Step => {
    const marks =
      step.tighten !== undefined ? (['joint'] as const) : step.number === 2 ? (['text', 'lists'] as const) : undefined;
    const note: TemporaryNote = {
      number: 'TC-07',
      text: [
        {
          kind: 'paragraph' as const,
          runs: [{ text: 'Drain through the ' }, { text: 'lower', strong: true as const }, { text: ' plug.' }],
        },
      ],
      reason: temporary.reason,
      scope: 'at the bench Heat exchange only; serial numbers 1001 to 1040 only',
      until: temporary.until,
      approver: temporary.approver,
    };
    return {
      ...step,
      ...(marks === undefined ? {} : { marks }),
      ...(step.number === 3 && key === 'large' ? { temporary: [note] } : {}),
    };
  };
  return {
    ...document,
    changes: {
      since: 'C',
      lines: [
        'Torque of the end-cover joint: 85 → 95 N·m',
        'Step 2: says that the cocks are tagged',
        'Gasket exchanged for the kit',
      ],
      more: 2,
    },
    variants: document.variants.map((v) => ({
      ...v,
      stages: v.stages.map((s) => ({ ...s, steps: s.steps.map((step) => withMarks(step, v.key)) })),
    })),
  };
}

/** The draft of a document beside its issue, as `--drafts` shows it. */
function draftOf(document: Document): Document {
  return {
    ...document,
    slug: `${document.slug}-draft`,
    standing: 'draft',
    variants: document.variants.map((v) => ({
      ...v,
      path: v.path.replace(`/${document.revision.rev}`, '/DRAFT'),
      cardName: `${v.cardName}-DRAFT`,
    })),
  };
}

function notice(number: string, bench: string, shop: CheckedShop, more: Partial<Notice>): Notice {
  const at = shop.benches.find((b) => b.id === bench);
  const card = (rev: string) => ({ doc: 'OF-204', rev, label: 'Large', sides: 4, fingerprint: '0A1B2C3D' });
  return {
    number,
    cause: 'issue',
    doc: 'OF-204',
    title: shop.documents.find((d) => d.doc === 'OF-204')?.title ?? '',
    bench,
    benchName: at?.name ?? bench,
    place: at?.place ?? '',
    copy: at?.copy ?? 0,
    copies: shop.benches.length,
    class: 'major',
    due: '2026-11-10',
    limitDays: 3,
    takeOut: [card('C')],
    putIn: [{ ...card('D'), file: 'cards/OF-204-LARGE.pdf' }],
    what: 'Torque',
    why: 'Bulletin',
    age: 15,
    overdue: true,
    ...more,
  };
}

/** The shop on the day, with what control knows of it, and the draft of OF-204 beside its issue. */
export function controlled(compiled: CheckedShop): Controlled {
  seq = 0;
  const demo = { ...compiled, documents: compiled.documents.map(withHistory) };
  const states = demo.documents.map((d) => stateOf(d, demo));
  const out = [SUSPENDED, WITHDRAWN, NOT_YET];
  const documents = demo.documents
    .filter((d) => !out.includes(d.doc))
    .flatMap((d) => (d.doc === 'OF-204' ? [changed(d), draftOf(d)] : [d]));
  const feedback = [
    {
      number: 'FB-03',
      doc: 'OF-204',
      rev: 'D',
      step: 4,
      from: 'heat-fitter',
      on: '2026-11-20',
      text: `The socket does not reach. ${HOSTILE}`,
    },
    {
      number: 'FB-02',
      doc: 'OF-170',
      rev: 'C',
      from: 'pump-fitter',
      on: '2026-10-01',
      text: 'Drawing too small.',
      answer: { by: 'quality-lead', on: '2026-10-05', text: 'Enlarged in the next issue.' },
    },
  ].flatMap((f): Feedback[] => {
    // Any place of the content serves: no check asks for it here.
    const [place] = demo.documents;
    return place === undefined ? [] : [{ ...f, keyRange: place.range, [READ_FROM]: place[READ_FROM] }];
  });
  const shop: CheckedShop = { ...demo, documents, whereUsed: whereUsed(documents), feedback };
  const old = demo.documents.find((d) => d.doc === 'OF-204');
  const control: ControlView = {
    asOf: AS_OF,
    ledger: { entries: 58, head: HEAD, last: '2026-11-20' },
    documents: [
      ...states,
      {
        doc: 'OF-270',
        title: 'Hawse pipe covers',
        standing: 'draft only',
        issues: [],
        coming: [],
        temporaries: [],
        reviews: [],
      },
    ],
    answers: [
      {
        path: 'C/OF-204/C/LARGE',
        doc: 'OF-204',
        slug: 'of-204',
        title: old?.title ?? '',
        rev: 'C',
        label: 'Large',
        fingerprint: `2${old?.variants.find((v) => v.label === 'Large')?.fingerprint.slice(1)}`,
        standing: 'superseded',
        effective: '2023-09-04',
        use: { doc: 'OF-204', title: old?.title ?? '', rev: 'D', path: 'C/OF-204/D/LARGE' },
        later: [{ rev: 'D', effective: '2026-03-02', what: 'Torque', why: 'Bulletin' }],
      },
      {
        path: 'C/OF-163/C',
        doc: 'OF-163',
        slug: 'of-163',
        title: 'Fire main valve bonnet',
        rev: 'C',
        label: '',
        fingerprint: demo.documents.find((d) => d.doc === 'OF-163')?.variants[0]?.fingerprint ?? '',
        standing: 'suspended',
        effective: '2025-04-07',
        reason: 'A bonnet was released under pressure.',
        since: '2026-11-18',
        later: [],
      },
    ],
    open: [
      notice('CN-51', 'heat-exchange', demo, {}),
      notice('CN-57', 'pumps-valves', demo, {
        cause: 'suspend',
        doc: SUSPENDED,
        title: 'Fire main valve bonnet',
        due: '2026-11-24',
        age: 1,
        limitDays: 1,
        overdue: false,
        putIn: [],
      }),
    ],
    received: [
      notice('CN-50', 'deck-gear', demo, {
        overdue: false,
        receipt: {
          ...base('2026-11-12'),
          kind: 'receipt',
          notice: 'CN-50',
          bench: 'deck-gear',
          copy: 6,
          by: 'rigger',
          on: '2026-11-12',
        },
      }),
    ],
    reviews: demo.documents
      .filter((d) => d.doc !== WITHDRAWN)
      .map((d, i) => ({
        doc: d.doc,
        title: d.title,
        owner: d.owner,
        interval: d.review,
        last: d.revision.effective,
        due: i === 0 ? '2026-10-01' : i === 1 ? '2026-12-30' : '2028-01-01',
        state: i === 0 ? 'overdue' : i === 1 ? 'due soon' : 'in order',
      })),
    editions: [
      {
        id: 'cooler-manual',
        document: 'Cooler manual RWC-4',
        kind: 'manual',
        edition: '6',
        owner: 'quality-lead',
        kept: 'Office, shelf 2',
        rests: [
          {
            doc: 'OF-204',
            title: old?.title ?? '',
            edition: '5',
            numbers: ['torque of the end-cover joint 85 N·m (page 31)', 'limit of the gap 0 to 0.10 mm (page 33)'],
          },
          {
            doc: 'OF-131',
            title: 'Raw water flange',
            edition: '5',
            numbers: ['torque of the flange 60 N·m (page 12)'],
            confirmed: {
              by: 'quality-lead',
              on: '2026-11-02',
              finding: `The page is word for word the same. ${HOSTILE}`,
            },
          },
        ],
      },
    ],
    drafts: [
      {
        doc: 'OF-204',
        title: old?.title ?? '',
        since: 'D',
        rev: 'F',
        changes: [
          { kind: 'value', of: 'torque', words: 'Torque of the end-cover joint: 85 → 90 N·m', variants: [] },
          { kind: 'added', of: 'step', words: `New step 12: look at the zinc anodes ${HOSTILE}`, variants: [] },
        ],
      },
      { doc: 'OF-270', title: 'Hawse pipe covers', rev: 'A', changes: [] },
    ],
    fingerprints: states.flatMap((s) =>
      s.issues.flatMap((issue) =>
        issue.cards.map(({ fingerprint, label, path }) => ({
          fingerprint,
          doc: issue.doc,
          rev: issue.rev,
          label,
          path,
          standing:
            s.standing === 'suspended' || s.standing === 'withdrawn'
              ? s.standing
              : s.coming.includes(issue)
                ? ('not yet effective' as const)
                : s.current === issue
                  ? ('current' as const)
                  : ('superseded' as const),
        })),
      ),
    ),
    comparisons: states.flatMap((s) =>
      s.issues.slice(1).map((issue, i) => ({
        doc: s.doc,
        from: s.issues[i]?.rev ?? '',
        to: issue.rev,
        path: `compare/${s.doc}/${s.issues[i]?.rev}-${issue.rev}/`.toLowerCase(),
      })),
    ),
  };
  return { shop, control };
}
