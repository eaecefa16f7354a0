/** What every card asks for, as one file: the page of orders multiplies and adds it in the browser. */

import type { APIRoute } from 'astro';
import { orderBook } from '../../../lists/index.ts';
import { inForce, shop } from '../../shop-data.ts';

export const GET: APIRoute = () =>
  new Response(JSON.stringify(orderBook({ ...shop, documents: inForce })), {
    headers: { 'content-type': 'application/json' },
  });
