/** One seed for all property tests, so that a run can be repeated; FETTLEBOOK_SEED=random, or a number, looks elsewhere. */

import fc from 'fast-check';

const SEED = 20261125;
const asked = process.env['FETTLEBOOK_SEED'];

if (asked !== 'random')
  fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: asked === undefined ? SEED : Number(asked) });
