/** Where the project stands, whatever folder the command was started in. */

import { fileURLToPath } from 'node:url';

/** Absolute folder of the project with a trailing separator; this file is two folders below it. */
export const PROJECT_ROOT: string = fileURLToPath(new URL('../../', import.meta.url));
