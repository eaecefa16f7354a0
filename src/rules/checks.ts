/** All checks in order. */

import { ACC } from './acc/index.ts';
import { BLT } from './blt/index.ts';
import type { Check } from './check.ts';
import { CRD } from './crd/index.ts';
import { CSM } from './csm/index.ts';
import { FLD } from './fld/index.ts';
import { JNT } from './jnt/index.ts';
import { LDG } from './ldg/index.ts';
import { PRT } from './prt/index.ts';
import { REF } from './ref/index.ts';
import { REV } from './rev/index.ts';
import { SAF } from './saf/index.ts';
import { SRC } from './src/index.ts';
import { TOL } from './tol/index.ts';
import { TRQ } from './trq/index.ts';
import { WRT } from './wrt/index.ts';

export const CHECKS: readonly Check[] = [
  ...SRC,
  ...FLD,
  ...REF,
  ...PRT,
  ...BLT,
  ...TRQ,
  ...JNT,
  ...TOL,
  ...CSM,
  ...SAF,
  ...WRT,
  ...REV,
  ...LDG,
  ...CRD,
  ...ACC,
];
