/** The search index as one file, loaded when somebody begins to search. */

import type { APIRoute } from 'astro';
import { buildSearchFile } from '../../render/search/index.ts';
import { shop } from '../shop-data.ts';

export const GET: APIRoute = () =>
  new Response(JSON.stringify(buildSearchFile(shop)), { headers: { 'content-type': 'application/json' } });
