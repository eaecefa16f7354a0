/** The web fonts, made from the card faces. */

import fonts from 'virtual:site-fonts';
import type { APIRoute, GetStaticPaths } from 'astro';

export const getStaticPaths: GetStaticPaths = () => Object.keys(fonts).map((face) => ({ params: { face } }));

export const GET: APIRoute = ({ params }) => {
  const bytes = Buffer.from(fonts[params['face'] ?? ''] ?? '', 'base64');
  return new Response(bytes, { headers: { 'content-type': 'font/woff2' } });
};
