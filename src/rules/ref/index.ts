/** The checks of the family REF, in order. */

import type { Check } from '../check.ts';
import { absentInVariant } from './absent-in-variant.ts';
import { duplicateIdentifier } from './duplicate-identifier.ts';
import { duplicateName } from './duplicate-name.ts';
import { duplicateSerial } from './duplicate-serial.ts';
import { partNumberConflict } from './part-number-conflict.ts';
import { stageCycle } from './stage-cycle.ts';
import { undefinedBench } from './undefined-bench.ts';
import { undefinedConsumable } from './undefined-consumable.ts';
import { undefinedJoint } from './undefined-joint.ts';
import { undefinedMachine } from './undefined-machine.ts';
import { undefinedPart } from './undefined-part.ts';
import { undefinedPerson } from './undefined-person.ts';
import { undefinedProcedure } from './undefined-procedure.ts';
import { undefinedStage } from './undefined-stage.ts';
import { undefinedStep } from './undefined-step.ts';
import { undefinedTool } from './undefined-tool.ts';
import { undefinedVariant } from './undefined-variant.ts';
import { unknownScheme } from './unknown-scheme.ts';
import { unpostedProcedure } from './unposted-procedure.ts';
import { unusedConsumable } from './unused-consumable.ts';
import { unusedJoint } from './unused-joint.ts';
import { unusedPart } from './unused-part.ts';
import { unusedStage } from './unused-stage.ts';
import { unusedTool } from './unused-tool.ts';
import { wrongKind } from './wrong-kind.ts';

export const REF: readonly Check[] = [
  undefinedTool,
  undefinedConsumable,
  undefinedPart,
  undefinedJoint,
  undefinedProcedure,
  undefinedStep,
  undefinedMachine,
  undefinedBench,
  undefinedPerson,
  undefinedStage,
  duplicateIdentifier,
  wrongKind,
  undefinedVariant,
  unknownScheme,
  absentInVariant,
  stageCycle,
  unusedTool,
  unusedConsumable,
  unusedPart,
  unusedJoint,
  unusedStage,
  unpostedProcedure,
  duplicateSerial,
  duplicateName,
  partNumberConflict,
];
