/** How a quantity is measured at the bench, and what is easily got wrong. Read by the build only. */
export interface QuantityNote {
  readonly measure: string;
  readonly note?: string;
}

/** One note for every quantity of a subject; the compiler names the one that is missing. */
export type NotesOf<Quantities> = Readonly<Record<keyof Quantities, QuantityNote>>;
