/** The drawing of a topic: the whole assembly with the part that the topic is about. */
import type { APIRoute, GetStaticPaths } from 'astro';
import { calculators } from '../../calculators/index.ts';
import { placeFile } from '../../components/home/assembly-file.ts';
import { partsOfDrawing, type DrawnTopic } from '../../components/home/assembly-topics.ts';
import { coloursOf } from '../../components/home/colours.ts';
import { exampleSizes } from '../../components/home/example-sizes.ts';
import tokens from '../../styles/tokens.css?raw';

export const getStaticPaths = (() =>
  (Object.keys(partsOfDrawing) as DrawnTopic[]).map((topic) => ({
    params: { topic },
    props: { topic },
  }))) satisfies GetStaticPaths;

const sizes = exampleSizes(Object.values(calculators), 'candidate');
const colours = coloursOf(tokens);

export const GET: APIRoute<{ topic: DrawnTopic }> = ({ props: { topic } }) =>
  new Response(placeFile(sizes, topic, colours), { headers: { 'Content-Type': 'image/svg+xml' } });
