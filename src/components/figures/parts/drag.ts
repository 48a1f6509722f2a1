import type { Attachment } from 'svelte/attachments';

/** A place in a drawing, in the units and from the corner of the group that the handle stands in. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

interface Drag {
  /** The handle was taken there; before the first move. What is dragged by its edge keeps its distance from there. */
  readonly take?: (at: Point) => void;
  readonly move: (to: Point) => void;
  /** It was let go, or the browser took the pointer away. */
  readonly leave?: () => void;
}

/** Lets a part of a drawing be dragged by mouse, pen or finger. Keys need a control of their own beside it. */
export function draggable({ take, move, leave }: Drag): Attachment<SVGGraphicsElement> {
  return (handle) => {
    function at(event: PointerEvent): Point | undefined {
      const matrix = handle.getScreenCTM()?.inverse();
      return matrix && new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
    }
    function moved(event: PointerEvent): void {
      const to = handle.hasPointerCapture(event.pointerId) ? at(event) : undefined;
      if (to !== undefined) move(to);
    }
    function taken(event: PointerEvent): void {
      if (event.button !== 0) return;
      event.preventDefault();
      handle.setPointerCapture(event.pointerId);
      const from = at(event);
      if (from !== undefined) take?.(from);
    }
    function left(): void {
      leave?.();
    }
    handle.addEventListener('pointerdown', taken);
    handle.addEventListener('pointermove', moved);
    handle.addEventListener('lostpointercapture', left);
    return () => {
      handle.removeEventListener('pointerdown', taken);
      handle.removeEventListener('pointermove', moved);
      handle.removeEventListener('lostpointercapture', left);
    };
  };
}

/** Of a disc that is made larger or smaller by its rim. */
interface RimDrag {
  readonly centre: () => Point;
  readonly radius: () => number;
  readonly take: () => void;
  /** The rim is asked to stand this far from the centre. */
  readonly move: (radius: number) => void;
  readonly leave: () => void;
}

/** {@link draggable} for the rim of a disc: it keeps the distance from the pointer that it was taken with. */
export function rimDraggable({
  centre,
  radius,
  take,
  move,
  leave,
}: RimDrag): Attachment<SVGGraphicsElement> {
  let beyond = 0;
  const away = (at: Point): number => Math.hypot(at.x - centre().x, at.y - centre().y);
  return draggable({
    take: (at) => {
      beyond = away(at) - radius();
      take();
    },
    move: (to) => {
      move(away(to) - beyond);
    },
    leave,
  });
}
