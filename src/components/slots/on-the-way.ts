import { workPostfix } from '../../calculators/postfix.ts';
import { isList, type SlotValues } from './content.ts';

/** The value of a postfix line among the values of a set. */
export function valueOnTheWay(postfix: string, values: SlotValues): number | undefined {
  return workPostfix(postfix, (name) => {
    const value = values[name];
    return typeof value === 'object' && !isList(value) ? undefined : value;
  });
}
