/** The checks of the family LDG, in order. */

import type { Check } from '../check.ts';
import { alteredIssuedFile } from './altered-issued-file.ts';
import { alteredLedgerLine } from './altered-ledger-line.ts';
import { approverKeyUnknown } from './approver-key-unknown.ts';
import { changeRecordRewritten } from './change-record-rewritten.ts';
import { falseSignature } from './false-signature.ts';
import { forkedLedger } from './forked-ledger.ts';
import { missingLedgerLine } from './missing-ledger-line.ts';
import { missingSignature } from './missing-signature.ts';
import { unknownSnapshotFormat } from './unknown-snapshot-format.ts';
import { unlawfulAct } from './unlawful-act.ts';
import { unreadableLedgerLine } from './unreadable-ledger-line.ts';
import { unrecordedFile } from './unrecorded-file.ts';
import { withdrawnNumberUsed } from './withdrawn-number-used.ts';

export const LDG: readonly Check[] = [
  unreadableLedgerLine,
  alteredLedgerLine,
  missingLedgerLine,
  forkedLedger,
  alteredIssuedFile,
  unrecordedFile,
  falseSignature,
  missingSignature,
  approverKeyUnknown,
  unlawfulAct,
  unknownSnapshotFormat,
  changeRecordRewritten,
  withdrawnNumberUsed,
];
