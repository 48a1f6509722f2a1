import type { Attachment } from 'svelte/attachments';

/** A place in a drawing, in the units and from the corner of the group that the handle stands in. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

interface Drag {
  /** The handle was taken; before the first move. */
  readonly take?: () => void;
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
      take?.();
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
