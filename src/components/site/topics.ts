import { getCollection, type CollectionEntry } from 'astro:content';

/** All topics in learning order. Build only. */
export async function topicsInOrder(): Promise<readonly CollectionEntry<'topics'>[]> {
  return (await getCollection('topics')).sort((a, b) => a.data.order - b.data.order);
}

/** What `getStaticPaths` gives of a page that each topic has one of. */
export async function topicPaths() {
  return (await topicsInOrder()).map((topic) => ({
    params: { topic: topic.id },
    props: { topic },
  }));
}
