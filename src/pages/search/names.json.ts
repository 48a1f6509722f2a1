/** Everything that has a name, for the search of a page: fetched when the search is opened. */
import type { APIRoute } from 'astro';
import { allNames } from '../../components/search/all-names.ts';

export const GET: APIRoute = async () => new Response(JSON.stringify(await allNames()));
