export type Json =
  null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

export interface Schema {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
  readonly const?: Json;
  readonly enum?: readonly Json[];
  readonly type?: string;
  readonly minimum?: number;
  readonly pattern?: string;
  readonly required?: readonly string[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly propertyNames?: Schema;
  readonly additionalProperties?: Schema | false;
  readonly items?: Schema;
}
const understood = new Set([
  ...['$schema', 'title', 'description', '$ref', '$defs', 'const', 'enum', 'type', 'minimum'],
  ...['pattern', 'required', 'properties', 'propertyNames', 'additionalProperties', 'items'],
]);

/** True for a value of the type that a schema names. */
function isOf(value: Json, type: string): boolean {
  if (type === 'integer') return Number.isInteger(value);
  return (Array.isArray(value) ? 'array' : typeof value) === type;
}

/** The faults of something that holds no others. */
function ownFaults(value: Json, rule: Schema, at: string): readonly string[] {
  const found: string[] = [];
  if (rule.const !== undefined && value !== rule.const) found.push(`${at} is another constant`);
  if (rule.enum !== undefined && !rule.enum.includes(value)) found.push(`${at} is none of those`);
  if (typeof value === 'number' && rule.minimum !== undefined && value < rule.minimum)
    found.push(`${at} is too small`);
  const { pattern } = rule;
  if (typeof value === 'string' && pattern !== undefined && !new RegExp(pattern, 'u').test(value))
    found.push(`${at} has another pattern`);
  return found;
}

function memberFaults(
  members: { readonly [key: string]: Json },
  rule: Schema,
  at: string,
  whole: Schema,
): readonly string[] {
  const { required = [], properties = {}, propertyNames, additionalProperties } = rule;
  const found = required
    .filter((name) => !Object.hasOwn(members, name))
    .map((name) => `${at}/${name} is missing`);
  for (const [name, member] of Object.entries(members)) {
    if (propertyNames !== undefined)
      found.push(...faults(name, propertyNames, `${at}/${name}, its name,`, whole));
    const own = properties[name];
    if (own !== undefined) found.push(...faults(member, own, `${at}/${name}`, whole));
    else if (additionalProperties === false) found.push(`${at}/${name} is not foreseen`);
    else if (additionalProperties !== undefined)
      found.push(...faults(member, additionalProperties, `${at}/${name}`, whole));
  }
  return found;
}

/**
 * The faults of a value by the part of JSON Schema 2020-12 that our schemas use; another keyword throws.
 *
 * @param whole the schema whose `$defs` a reference means
 */
export function faults(
  value: Json | undefined,
  rule: Schema,
  at = '',
  whole: Schema = rule,
): readonly string[] {
  for (const word of Object.keys(rule)) {
    if (!understood.has(word)) throw new Error(`this check does not know the keyword ${word}`);
  }
  if (value === undefined) return [];
  const { $ref, type, items } = rule;
  const found: string[] = [];
  if ($ref !== undefined) {
    const target = whole.$defs?.[$ref.replace('#/$defs/', '')];
    if (target === undefined) throw new Error(`${$ref} leads nowhere`);
    found.push(...faults(value, target, at, whole));
  }
  if (type !== undefined && !isOf(value, type)) return [...found, `${at} is no ${type}`];
  found.push(...ownFaults(value, rule, at));
  if (Array.isArray(value)) {
    const each = value as readonly Json[];
    if (items !== undefined)
      for (const [i, item] of each.entries())
        found.push(...faults(item, items, `${at}/${i}`, whole));
  } else if (typeof value === 'object' && value !== null)
    found.push(...memberFaults(value as { readonly [key: string]: Json }, rule, at, whole));
  return found;
}
