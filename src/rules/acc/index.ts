/** The checks of the family ACC, in order. */

import type { Check } from '../check.ts';
import { acceptanceWithoutReason } from './acceptance-without-reason.ts';
import { errorAccepted } from './error-accepted.ts';
import { idleAcceptance } from './idle-acceptance.ts';
import { unknownAcceptance } from './unknown-acceptance.ts';

export const ACC: readonly Check[] = [idleAcceptance, errorAccepted, acceptanceWithoutReason, unknownAcceptance];
