type Tell = (seen: boolean) => void;

const listeners = new Map<Element, Tell[]>();
let observer: IntersectionObserver | undefined;

/** A stretch of the page that is on the screen or not as a whole. */
export interface Block {
  seen: boolean;
}

/** Tells each time an element comes onto the screen and leaves it; once at the beginning too. */
export function watchScreen(target: Element, tell: Tell): void {
  observer ??= new IntersectionObserver((entries) => {
    for (const { target: seen, isIntersecting } of entries)
      for (const listener of listeners.get(seen) ?? []) listener(isIntersecting);
  });
  const known = listeners.get(target);
  if (known !== undefined) known.push(tell);
  else listeners.set(target, [tell]);
  // Observed anew, so that one who joins later is told where the element stands.
  observer.unobserve(target);
  observer.observe(target);
}
