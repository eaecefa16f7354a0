/** The running audit on this device: kept under one key, which `scan-mark.js` reads and adds to on every card's page. */

import type { Mark, Marks } from './compare.ts';

const KEY = 'fettlebook.audit';
const NAME_KEY = 'fettlebook.audit.by';

export interface Audit {
  readonly bench: string;
  readonly benchName: string;
  /** Date and time in ISO 8601. */
  readonly started: string;
  readonly marks: Marks;
  /** Whole address of the audit page, to come back to. */
  readonly page: string;
}

function isAudit(value: unknown): value is Audit {
  if (typeof value !== 'object' || value === null) return false;
  const { bench, benchName, started, marks, page } = value as Record<string, unknown>;
  const texts = [bench, benchName, started, page].every((t) => typeof t === 'string');
  return texts && typeof marks === 'object' && marks !== null;
}

/** The running audit of any bench; undefined when there is none or storage is refused. */
export function readAudit(): Audit | undefined {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    return isAudit(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** Says whether the device keeps it. */
export function writeAudit(audit: Audit): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify(audit));
    return true;
  } catch {
    return false;
  }
}

export function clearAudit(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // Nothing was kept.
  }
}

/** Adds or takes away a mark of the running audit; says whether it was kept. */
export function setMark(path: string, mark: Mark | undefined): boolean {
  const audit = readAudit();
  if (audit === undefined) return false;
  const { [path]: _old, ...others } = audit.marks;
  return writeAudit({ ...audit, marks: mark === undefined ? others : { ...others, [path]: mark } });
}

/** Who audits: asked once on a device. */
export function readName(): string {
  try {
    return localStorage.getItem(NAME_KEY) ?? '';
  } catch {
    return '';
  }
}

export function writeName(name: string): void {
  try {
    localStorage.setItem(NAME_KEY, name);
  } catch {
    // It is asked again next time.
  }
}
