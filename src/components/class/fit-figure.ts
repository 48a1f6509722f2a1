/** Frames in which a figure that has just come to life settles. */
const patience = 120;
/** Of the height of the window, what one drawing may take. */
const share = 0.8;

/** The drawings of a figure that can be seen, in their order. */
function drawingsOf(figure: HTMLElement): readonly SVGSVGElement[] {
  return [...figure.querySelectorAll('svg')].filter(
    (svg) => svg.getBoundingClientRect().height > 60,
  );
}

/**
 * Shows a figure as it is worked on a wide screen: brings it to life, makes each of its drawings as high as fits the
 * window by giving it less width, since a drawing keeps the size of its letters.
 *
 * @param figure the screen of the figure
 */
export function showFigure(figure: HTMLElement): void {
  const island = figure.querySelector<HTMLElement>('.figure-island');
  if (island === null) return;
  // A part is brought to life by what passes over it.
  if (!island.hasAttribute('data-alive'))
    island.dispatchEvent(new PointerEvent('pointermove', { bubbles: true }));
  let left = patience;
  const settle = (): void => {
    left -= 1;
    const isAlive = island.hasAttribute('data-alive') || island.dataset['figure'] === undefined;
    const isFit = isAlive && drawingsOf(figure).every(fit);
    if (left > 0 && !(isFit && left < patience - 20)) requestAnimationFrame(settle);
    else figure.dataset['fitted'] = '';
  };
  settle();
}

/** Pixels of a unit of a drawing below which its letters, 13 units, are under 32 at 1080 lines. */
const leastScale = 32 / 13 / 1080;
/** How high a drawing was before it was made narrower last, and the width that its box had. */
const before = new WeakMap<Element, { readonly height: number; readonly maxWidth: string }>();

/** Gives a drawing that is too high less width; true once it fits, or is found not to become lower by it. */
function fit(svg: SVGSVGElement): boolean {
  const box = svg.parentElement;
  const { width, height } = svg.getBoundingClientRect();
  const most = innerHeight * share;
  if (box === null || box.dataset['fit'] === 'no') return true;
  const last = before.get(svg);
  const isSmall = width / svg.viewBox.baseVal.width < leastScale * innerHeight;
  if (last !== undefined && (isSmall || height > Math.max(most, 0.98 * last.height))) {
    // As narrow as it can be drawn with these letters; what is left of it is scrolled to.
    box.dataset['fit'] = 'no';
    box.style.maxWidth = last.maxWidth;
    return true;
  }
  if (height <= most) return true;
  before.set(svg, { height, maxWidth: box.style.maxWidth });
  const narrower = Math.floor(width * Math.max(0.8, most / height));
  box.style.maxWidth = `${String(narrower)}px`;
  box.style.width = '100%';
  box.style.marginInline = 'auto';
  return false;
}
