/** Runs on every card page: says when the page is too old to be relied on, and marks the card in a running audit. */

/**
 * A running audit, kept under this key by the audit page of a bench. `page`: address of the audit page, from the root of
 * the host (`/benches/heat-exchange/audit/`) or whole. `marks`: by path of the card (`C/OF-204/B/LARGE`).
 * @typedef {{ standing: string, doc: string, rev: string, label: string, fingerprint: string, at: string }} Mark
 * @typedef {{ bench: string, benchName: string, started: string, page: string, marks: Record<string, Mark> }} Audit
 */
const KEY = 'fettlebook.audit';
const DAY = 86_400_000;

/** The strip must look the same on pages of two kinds, so it carries its own style. Sticky: it never hides the last lines. */
const STYLE = `
.scan-strips{position:sticky;bottom:0;z-index:30;font:400 17px/24px "Source Sans 3","Segoe UI",Arial,sans-serif}
.scan-strip{margin:0;padding:12px 16px;background:#14191c;color:#fff;border-top:4px solid #7fd3df;display:flex;flex-wrap:wrap;align-items:center;gap:4px 24px}
.scan-strip p{margin:0;flex:1 1 240px}
.scan-strip a{display:inline-flex;align-items:center;min-height:48px;color:#7fd3df;font-weight:700}
.scan-strip a:focus-visible{outline:3px solid #fff;outline-offset:2px}
.scan-strip.old{background:#f9c80e;color:#14191c;border-top-color:#14191c;font-weight:600}
@media print{.scan-strips{display:none}}`;

/** @param {string} key @returns {string | null} */
function stored(key) {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** @returns {Audit | undefined} The running audit; anything that has not its form counts as none. */
function runningAudit() {
  try {
    const audit = JSON.parse(stored(KEY) ?? 'null');
    if (typeof audit?.benchName !== 'string' || typeof audit.page !== 'string') return undefined;
    if (typeof audit.marks !== 'object' || audit.marks === null || Array.isArray(audit.marks)) return undefined;
    return audit;
  } catch {
    return undefined;
  }
}

/** Days from one day to another, both `2026-11-25`; NaN when one cannot be read. @param {string} from @param {string} to */
function daysBetween(from, to) {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY);
}

/** The day on the reader's own calendar. @param {Date} now */
function dayOf(now) {
  const two = (/** @type {number} */ n) => String(n).padStart(2, '0');
  return `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** @param {number} n */
const days = (n) => `${n}\u00a0${n === 1 ? 'day' : 'days'}`;

/**
 * What is wrong with the age of the page, if anything is.
 * @param {{ asOf?: string, freshDays?: string, turns?: string }} facts of the page, @param {string} today
 */
function ageWords({ asOf = '', freshDays = '', turns = '' }, today) {
  const age = daysBetween(asOf, today);
  if (Number.isNaN(age)) return undefined;
  // A day of grace for time zones.
  if (age < -1)
    return `This page answers for ${asOf}, but this device takes today for ${today}. Set its date, or ask quality.`;
  if (daysBetween(turns, today) >= 0)
    return `This page answers for ${asOf}. On ${turns} another revision took effect: load the page again, or ask quality before you rely on it.`;
  if (freshDays !== '' && age > Number(freshDays))
    return `This page is ${days(age)} old. Ask quality before you rely on it.`;
  return undefined;
}

/**
 * Adds the card to the running audit and says so.
 * @param {DOMStringMap} card @param {Audit} audit @param {Date} now
 */
function markCard(card, audit, now) {
  const { cardPath = '', standing = '', doc = '', rev = '', label = '', fingerprint = '' } = card;
  const name = [rev === '' ? doc : `${doc} Rev ${rev}`, label].filter((t) => t !== '').join(', ');
  const mark = { standing, doc, rev, label, fingerprint, at: now.toISOString() };
  try {
    localStorage.setItem(KEY, JSON.stringify({ ...audit, marks: { ...audit.marks, [cardPath]: mark } }));
  } catch {
    return `Audit of ${audit.benchName}: ${name} could not be kept, this device has no room. Write it down: ${standing}.`;
  }
  return `Audit of ${audit.benchName}: ${name} marked as ${standing}. Scan the next card.`;
}

/** The address, when it leads to this host. @param {string} page */
function ownAddress(page) {
  try {
    const url = new URL(page, location.href);
    return url.origin === location.origin && /^https?:$/u.test(url.protocol) ? url.href : undefined;
  } catch {
    return undefined;
  }
}

/** @param {HTMLElement} strips @param {'audit' | 'old'} kind @param {string} words @param {string} [link] */
function addStrip(strips, kind, words, link) {
  const strip = document.createElement('div');
  strip.className = `scan-strip ${kind}`;
  const text = document.createElement('p');
  text.textContent = words;
  strip.append(text);
  if (link !== undefined) {
    const a = document.createElement('a');
    a.href = link;
    a.textContent = 'Back to the audit';
    strip.append(a);
  }
  strips.append(strip);
}

/** @param {Date} now */
function run(now) {
  const page = /** @type {HTMLElement | null} */ (document.querySelector('[data-as-of]'));
  const card = /** @type {HTMLElement | null} */ (document.querySelector('[data-card-path]'));
  const old = page === null ? undefined : ageWords(page.dataset, dayOf(now));
  const audit = card === null ? undefined : runningAudit();
  if (old === undefined && audit === undefined) return;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(STYLE);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  const strips = document.createElement('div');
  strips.className = 'scan-strips';
  strips.setAttribute('role', 'status');
  document.body.append(strips);
  if (old !== undefined) addStrip(strips, 'old', old);
  if (card !== null && audit !== undefined)
    addStrip(strips, 'audit', markCard(card.dataset, audit, now), ownAddress(audit.page));
}

run(new Date());
