import { stepText } from '../../units/step.ts';

/** Which way a key steps a number, and by how much of its last digit. */
interface Stepping {
  readonly direction: 1 | -1;
  readonly size: 'one' | 'ten' | 'tenth';
}

/** How a key steps; undefined for one that steps nothing. */
export function steppingOf({
  key,
  altKey,
}: Pick<KeyboardEvent, 'key' | 'altKey'>): Stepping | undefined {
  const [, kind, way] = /^(Arrow|Page)(Up|Down)$/.exec(key) ?? [];
  if (kind === undefined) return undefined;
  return {
    direction: way === 'Up' ? 1 : -1,
    size: kind === 'Page' ? 'ten' : altKey ? 'tenth' : 'one',
  };
}

/** A typed number after a key; undefined where the key steps nothing, or there is no number to step. */
export function steppedBy(
  event: Pick<KeyboardEvent, 'key' | 'altKey'>,
  typed: string,
): string | undefined {
  const how = steppingOf(event);
  return how && stepText(typed, how.direction, how.size);
}
