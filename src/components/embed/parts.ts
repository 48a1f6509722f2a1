import type { AnyCalculator } from '../../calculators/define.ts';
import { calculators } from '../../calculators/index.ts';
import { figuresOf } from '../figures/static.ts';
import { topicsInOrder } from '../site/topics.ts';

/** A calculator or a figure that another site may show. */
export interface EmbedPart {
  /** Of its page: `embed/<id>/`. */
  readonly id: string;
  readonly title: string;
  readonly topic: { readonly id: string; readonly title: string };
  readonly calculator: AnyCalculator;
  /** The figure's id; absent for the calculator's sheet. */
  readonly figure?: string;
  /** How high a frame of a page's width shows most of it [px]. */
  readonly height: number;
}

/** A figure's name as words: `groove-section` is “Groove section”. */
function nameOf(figure: string): string {
  return `${figure.charAt(0).toUpperCase()}${figure.slice(1)}`.replaceAll('-', ' ');
}

/** Every part that can be embedded, in the learning order: of each topic its calculators, then its figures. Build only. */
export async function embedParts(): Promise<readonly EmbedPart[]> {
  const declared: Readonly<Record<string, AnyCalculator>> = calculators;
  const topics = await topicsInOrder();
  return topics.flatMap(({ id: topicId, data }) => {
    const topic = { id: topicId, title: data.title };
    const own = data.calculators.flatMap((id) => declared[id] ?? []);
    const sheets = own.map((calculator) => ({
      id: calculator.id,
      title: calculator.title,
      topic,
      calculator,
      height: 1100,
    }));
    const figures = own.flatMap((calculator) =>
      figuresOf(calculator.id).map((figure) => ({
        // A figure may have the name of a calculator.
        id: `figure-${figure}`,
        title: `${nameOf(figure)} (${data.title})`,
        topic,
        calculator,
        figure,
        height: 900,
      })),
    );
    return [...sheets, ...figures];
  });
}
