import type { ListEntry, NumberEntry } from '../define.ts';

/** One number of the dictionary; its name stands twice so that a reader of the code can search for either. */
export function quantity<const N extends string>(
  name: N,
  rest: Omit<NumberEntry, 'type' | 'name'>,
): NumberEntry & { readonly name: N } {
  return { type: 'number', name, ...rest };
}

/** Repeated readings of one quantity, typed in one field. */
export function readings<const N extends string>(
  name: N,
  rest: Omit<ListEntry, 'type' | 'name'>,
): ListEntry & { readonly name: N } {
  return { type: 'list', name, ...rest };
}
