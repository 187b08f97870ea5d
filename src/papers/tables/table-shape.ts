import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';

/** One thing that may be chosen in a cell; `value` is what the boat file says, `says` what a person reads. */
export interface CellChoice {
  readonly value: string;
  readonly says: string;
}

/** One column of a table to type in. */
export interface TableColumn {
  readonly id: string;
  /** the head of the column */
  readonly says: string;
  /** figures stand to the right */
  readonly isFigure?: boolean;
  /** what may be chosen; any of it may be typed or pasted too */
  readonly choices?: readonly CellChoice[];
  /** true where the cells tell what follows from others, and are not typed in */
  readonly isFixed?: boolean;
  /** an example of what may be typed */
  readonly hint?: string;
}

/** One row: the text of each cell by column, and what figures are sorted by. */
export interface TableRow {
  readonly id: string;
  readonly cells: Readonly<Record<string, string>>;
  readonly sortsBy?: Readonly<Record<string, number>>;
}

/** What becomes of a text put into a cell: edits, none where it says so already, or a sentence on what is wrong with it. */
export type Put = { readonly edits: readonly EditCall[] } | { readonly wrong: string };

/** A table of one kind of thing aboard, as a person types in it. */
export interface BoatTable {
  readonly id: string;
  readonly says: string;
  readonly columns: readonly TableColumn[];
  readonly rowsOf: (boat: Boat) => readonly TableRow[];
  readonly put: (boat: Boat, at: { readonly row: string; readonly column: string }, text: string) => Put;
  /** a new row from what was typed in some of its cells; absent where rows come from elsewhere */
  readonly add?: (boat: Boat, cells: Readonly<Record<string, string>>) => Put;
  /** takes a row out; absent where that is done elsewhere */
  readonly remove?: (boat: Boat, row: string) => Put;
}
