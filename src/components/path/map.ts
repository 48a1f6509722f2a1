import { columnsOf, type Needing } from './needs.ts';

/** A place of a column: a topic, or room for a line that passes by. */
export interface Place {
  readonly id: string | undefined;
}

/** A line from one place to the next column, in places from the top of the map and columns from its left. */
export interface Line {
  readonly column: number;
  readonly from: number;
  readonly to: number;
}

/** The map of the topics: columns of places, and the lines between them. */
export interface PathMap {
  readonly columns: readonly (readonly Place[])[];
  /** Places in the longest column. */
  readonly rows: number;
  readonly lines: readonly Line[];
}

/** A place while the map is made. */
interface Node extends Place {
  readonly after: readonly Node[];
  row: number;
}

/** One node for each topic, and one for each column that a line passes; column by column. */
function nodesOf(topics: readonly Needing[]): Node[][] {
  const at = columnsOf(topics);
  const columns: Node[][] = [];
  const nodes = new Map<string, Node>();
  const put = (column: number, id: string | undefined, after: readonly Node[]): Node => {
    const node = { id, after, row: 0 };
    (columns[column] ??= []).push(node);
    return node;
  };
  const inOrder = [...topics].sort((one, other) => (at.get(one.id) ?? 0) - (at.get(other.id) ?? 0));
  for (const { id, needs } of inOrder) {
    const column = at.get(id) ?? 0;
    const after = needs.flatMap((need) => {
      let node = nodes.get(need);
      for (let passed = (at.get(need) ?? 0) + 1; passed < column; passed += 1)
        node = node && put(passed, undefined, [node]);
      return node ?? [];
    });
    nodes.set(id, put(column, id, after));
  }
  return columns;
}

/** Sets each column about the middle of the longest. */
function setRows(columns: readonly (readonly Node[])[]): number {
  const rows = Math.max(...columns.map(({ length }) => length));
  for (const column of columns)
    for (const [place, node] of column.entries()) node.row = (rows - column.length) / 2 + place;
  return rows;
}

function mean(rows: readonly number[], otherwise: number): number {
  return rows.length === 0 ? otherwise : rows.reduce((sum, row) => sum + row, 0) / rows.length;
}

/** Sorts each column by where its neighbours stand, left and right in turn, so that few lines cross. */
function untangle(columns: readonly Node[][]): void {
  const following = (node: Node): readonly Node[] =>
    columns.flat().filter(({ after }) => after.includes(node));
  for (let round = 0; round < 6; round += 1) {
    const isForward = round % 2 === 0;
    for (const column of isForward ? columns : [...columns].reverse()) {
      const wish = new Map(
        column.map((node) => {
          const neighbours = isForward ? node.after : following(node);
          return [
            node,
            mean(
              neighbours.map(({ row }) => row),
              node.row,
            ),
          ];
        }),
      );
      column.sort((one, other) => (wish.get(one) ?? 0) - (wish.get(other) ?? 0));
      setRows(columns);
    }
  }
}

/**
 * Lays the topics out from left to right by what they need.
 *
 * @param topics in learning order, with which neighbours keep their order where nothing else decides
 * @throws Error for a need that is no topic, and for a circle
 */
export function pathMap(topics: readonly Needing[]): PathMap {
  const columns = nodesOf(topics);
  setRows(columns);
  untangle(columns);
  const rows = setRows(columns);
  return {
    columns: columns.map((column) => column.map(({ id }) => ({ id }))),
    rows,
    lines: columns.flatMap((column, place) =>
      column.flatMap((node) =>
        node.after.map((before) => ({
          column: place - 1,
          from: before.row + 0.5,
          to: node.row + 0.5,
        })),
      ),
    ),
  };
}
