/** The search index as one file, loaded when somebody begins to search. */

import type { APIRoute } from 'astro';
import { buildSearchFile } from '../../render/search/index.ts';
import { stopped } from '../control-data.ts';
import { findMachine, shop } from '../shop-data.ts';

/** A result must not pass for a document in force when it is none. */
const documents = shop.documents.map((d) =>
  d.standing === undefined ? d : { ...d, title: `${d.title} (${d.standing})` },
);

export const GET: APIRoute = () =>
  new Response(
    JSON.stringify(
      buildSearchFile(
        { ...shop, documents },
        stopped.map((d) => ({ ...d, machine: findMachine(d.machine ?? '')?.name ?? '' })),
      ),
    ),
    {
      headers: { 'content-type': 'application/json' },
    },
  );
