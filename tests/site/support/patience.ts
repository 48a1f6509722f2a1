/**
 * How long anything that a page owes may take (ms). It bounds a wait that fails, and no wait that succeeds: a
 * machine with other work may need many seconds for what takes one to show on an idle one.
 */
export const patience = 60_000;
