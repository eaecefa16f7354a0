/** JSON Schema files for an editor, from the same shapes that the compiler checks. */

import { z } from 'zod';
import { feedbackShape, outsideShape, temporaryShape } from './shapes/control.ts';
import { machineShape } from './shapes/machine.ts';
import { procedureShape, sharedStageShape } from './shapes/procedure.ts';
import { benchesShape, consumablesShape, peopleShape, shopShape, toolsShape } from './shapes/registers.ts';
import { statedTableShape } from './shapes/torque-table.ts';

const SHAPES: Readonly<Record<string, z.ZodType>> = {
  shop: shopShape,
  people: peopleShape,
  benches: benchesShape,
  tools: toolsShape,
  consumables: consumablesShape,
  outside: outsideShape,
  temporary: temporaryShape,
  feedback: feedbackShape,
  machine: machineShape,
  stage: sharedStageShape,
  procedure: procedureShape,
  'torque-table': statedTableShape,
};

/** File name (`procedure.schema.json`) to its text. */
export function jsonSchemas(): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(SHAPES).map(([name, shape]) => [
      `${name}.schema.json`,
      `${JSON.stringify(z.toJSONSchema(shape, { io: 'input', target: 'draft-2020-12' }), null, 2)}\n`,
    ]),
  );
}
