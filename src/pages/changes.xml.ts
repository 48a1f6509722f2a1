/** What changed in the calculations, as a feed to follow. */
import type { APIRoute } from 'astro';
import { getCollection } from 'astro:content';
import { calculators } from '../calculators/index.ts';
import { atomFeed } from '../components/site/feed.ts';

const titleOf = (id: string): string => calculators[id as keyof typeof calculators].title;

export const GET: APIRoute = async () => {
  const changes = (await getCollection('changes')).sort((a, b) => b.data.version - a.data.version);
  const entries = changes.map(({ id, data: { version, date, what, calculators: changed } }) => ({
    id: `changes/${id}`,
    title: `Version ${version} of the calculations`,
    date,
    text: changed.length === 0 ? what : `${what} In: ${changed.map(titleOf).join(', ')}`,
    link: `changes/#${id}`,
  }));
  const feed = { self: 'changes.xml', page: 'changes/', title: 'Throwbook: changes' };
  return new Response(atomFeed(feed, entries));
};
