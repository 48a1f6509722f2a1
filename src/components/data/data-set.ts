import { csvText } from '../../calculators/csv.ts';

/** What stands in one place of a row. `undefined`: nothing is known, or nothing applies. */
export type Cell = string | number | boolean | readonly string[] | undefined;

/** One column of a published table. */
export interface Column {
  readonly name: string;
  /** `texts`: a list of texts, which a CSV joins by semicolons. */
  readonly type: 'text' | 'number' | 'yes or no' | 'texts';
  /** What it says, in one sentence. */
  readonly means: string;
  /** Set where a row may leave it out. */
  readonly optional?: true;
  /** The only words that stand in it. */
  readonly oneOf?: readonly string[];
}

export type Row = Readonly<Record<string, Cell>>;

/** A table that others may take: the same rows as JSON and as CSV. */
export interface DataSet {
  /** Its address below `data/`, without what tells the format: `tables/iso-286`. */
  readonly path: string;
  readonly title: string;
  readonly means: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

/** A file that the build writes below `data/`. */
export interface DataFile {
  readonly path: string;
  readonly text: string;
}

/** The way from a file below `data/` to another: every folder on the way up, then its path. */
function wayTo(target: string, from: string): string {
  return '../'.repeat(from.split('/').length - 1) + target;
}

function schemaPath({ path }: DataSet): string {
  return `schema/${path}.json`;
}

/** The cells that a row has, in the order of the columns. */
function present({ columns, path }: DataSet, row: Row): Readonly<Record<string, Cell>> {
  const unknown = Object.keys(row).find((name) => !columns.some((column) => column.name === name));
  if (unknown !== undefined) throw new RangeError(`data/${path} has no column “${unknown}”.`);
  return Object.fromEntries(
    columns.flatMap(({ name }) => (row[name] === undefined ? [] : [[name, row[name]]])),
  );
}

/**
 * A table as JSON, one row a line, so that a change shows as the lines that it changed.
 *
 * @param version of the calculations that its numbers come from
 */
export function jsonOf(set: DataSet, version: number): string {
  const head = {
    $schema: wayTo(schemaPath(set), `${set.path}.json`),
    title: set.title,
    calculations: version,
  };
  const rows = set.rows.map((row) => JSON.stringify(present(set, row)));
  const before = JSON.stringify(head, undefined, 2).replace(/\n\}$/, '');
  return `${before},\n  "rows": [\n    ${rows.join(',\n    ')}\n  ]\n}\n`;
}

function csvCellOf(cell: Cell): string | number | undefined {
  if (typeof cell === 'object') return cell.join('; ');
  return typeof cell === 'boolean' ? (cell ? 'yes' : 'no') : cell;
}

/** A table as CSV (RFC 4180), the names of the columns first; text that a spreadsheet would work out is made harmless. */
export function csvOf({ columns, rows }: DataSet): string {
  return csvText([
    columns.map(({ name }) => name),
    ...rows.map((row) => columns.map(({ name }) => csvCellOf(row[name]))),
  ]);
}

const schemaTypes = {
  text: { type: 'string' },
  number: { type: 'number' },
  'yes or no': { type: 'boolean' },
  texts: { type: 'array', items: { type: 'string' } },
} as const;

/** The JSON Schema (2020-12) of a table's JSON. */
export function schemaOf({ title, means, columns }: DataSet): string {
  const properties = Object.fromEntries(
    columns.map(({ name, type, means: description, oneOf }) => [
      name,
      { description, ...schemaTypes[type], ...(oneOf === undefined ? {} : { enum: oneOf }) },
    ]),
  );
  const schema = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title,
    description: means,
    type: 'object',
    required: ['$schema', 'title', 'calculations', 'rows'],
    properties: {
      $schema: { type: 'string' },
      title: { type: 'string' },
      calculations: {
        description: 'The version of the calculations that the numbers come from.',
        type: 'integer',
        minimum: 1,
      },
      rows: { type: 'array', items: { $ref: '#/$defs/row' } },
    },
    additionalProperties: false,
    $defs: {
      row: {
        type: 'object',
        required: columns.filter(({ optional }) => optional !== true).map(({ name }) => name),
        properties,
        additionalProperties: false,
      },
    },
  };
  return `${JSON.stringify(schema, undefined, 2)}\n`;
}

/** The three files of a table: its JSON, its CSV and its schema. */
export function filesOf(set: DataSet, version: number): readonly DataFile[] {
  return [
    { path: `${set.path}.json`, text: jsonOf(set, version) },
    { path: `${set.path}.csv`, text: csvOf(set) },
    { path: schemaPath(set), text: schemaOf(set) },
  ];
}
