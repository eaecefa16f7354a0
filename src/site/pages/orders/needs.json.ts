/** What every card asks for, as one file: the page of orders multiplies and adds it in the browser. */

import type { APIRoute } from 'astro';
import { orderBook } from '../../../lists/index.ts';
import { shop } from '../../shop-data.ts';

export const GET: APIRoute = () =>
  new Response(JSON.stringify(orderBook(shop)), { headers: { 'content-type': 'application/json' } });
