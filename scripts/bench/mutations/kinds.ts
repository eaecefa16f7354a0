/** All kinds of mistakes, in the order of the table. */

import { ACCEPTED } from './accepted.ts';
import { CARDS } from './cards.ts';
import { CONSUMABLES } from './consumables.ts';
import { CONTROL } from './control.ts';
import { ISSUED_SLIPS } from './issued.ts';
import { JOINTS } from './joints.ts';
import type { Kind } from './kind.ts';
import { LEDGER } from './ledger.ts';
import { OUTSIDE } from './outside.ts';
import { REFERENCES } from './references.ts';
import { REGISTERS } from './registers.ts';
import { SAFETY } from './safety.ts';
import { STEPS } from './steps.ts';
import { TABLES } from './tables.ts';
import { TEMPORARY } from './temporary.ts';
import { TOOLS } from './tools.ts';
import { TORQUE } from './torque.ts';
import { VALUES } from './values.ts';
import { WRITING } from './writing.ts';
import { YAML_SIGNS } from './yaml.ts';

export const KINDS: readonly Kind[] = [
  ...YAML_SIGNS,
  ...REGISTERS,
  ...VALUES,
  ...REFERENCES,
  ...LEDGER,
  ...JOINTS,
  ...TORQUE,
  ...TABLES,
  ...STEPS,
  ...TOOLS,
  ...CONSUMABLES,
  ...SAFETY,
  ...WRITING,
  ...CONTROL,
  ...OUTSIDE,
  ...TEMPORARY,
  ...ISSUED_SLIPS,
  ...CARDS,
  ...ACCEPTED,
];
