import type { APIRoute } from 'astro';
import { favicon } from '../mark.ts';

export const GET: APIRoute = () => new Response(favicon, { headers: { 'content-type': 'image/svg+xml' } });
