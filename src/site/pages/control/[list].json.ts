/** Every printed fingerprint with what it stands for, as one file: loaded when one is typed in. */

import type { APIRoute } from 'astro';
import { control } from '../../control-data.ts';

export function getStaticPaths() {
  return control === undefined ? [] : [{ params: { list: 'fingerprints' } }];
}

export const GET: APIRoute = () =>
  new Response(JSON.stringify(control?.fingerprints ?? []), { headers: { 'content-type': 'application/json' } });
