/** The checks, tables, symbols and terms as files for others: JSON with its schema, and CSV. */
import type { APIRoute, GetStaticPaths } from 'astro';
import { getCollection } from 'astro:content';
import { calculationsVersion } from '../../calculators/version.ts';
import { allData } from '../../components/data/all-data.ts';
import { filesOf } from '../../components/data/data-set.ts';

export const getStaticPaths: GetStaticPaths = async () => {
  const terms = (await getCollection('glossary')).map(({ data }) => data);
  return allData(terms)
    .flatMap((set) => filesOf(set, calculationsVersion))
    .map(({ path, text }) => ({ params: { file: path }, props: { text } }));
};

export const GET: APIRoute<{ text: string }> = ({ props }) => new Response(props.text);
