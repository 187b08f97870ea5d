/** What stands in one cell: words, a figure in the unit of its column, or nothing. */
export type ListCell = string | number | undefined;

/** One column of a list. */
export interface ListColumn {
  readonly id: string;
  /** the head of the column, without its unit */
  readonly head: string;
  /** unit of the figures in it, as it is printed behind the head: "m", "A", "mm2" */
  readonly unit?: string;
  /**
   * figures stand to the right and are figures in a spreadsheet; a label or an id is set in the face of figures; a tick is a box
   * and a blank is room on paper to be filled in by hand where the cell says nothing yet
   */
  readonly kind?: 'words' | 'figure' | 'label' | 'tick' | 'blank';
  /** digits behind the point of a figure; two at most, and no nought at the end, unless told */
  readonly digits?: number;
  /** share of the width of a page beside the other columns; 1 unless told */
  readonly share?: number;
  /** on a page said once, where the rows under it say the same in this column and in those before it that are said once */
  readonly once?: true;
  /** false: in files only; left out where the list is printed, because a page has no room for it or a person no use */
  readonly printed?: false;
}

/**
 * A list as plain data: what becomes a file of comma-separated values, a sheet of a workbook, a part of the JSON and a table on
 * a page is this, once. It knows nothing of any of them.
 */
export interface ListTable {
  /** the name of its files and of its sheet: "cables" */
  readonly id: string;
  readonly title: string;
  /** what the list is and how to read it, in a sentence or two; printed above it */
  readonly says?: string;
  readonly columns: readonly ListColumn[];
  /** a cell for each column, in the order of the columns */
  readonly rows: readonly (readonly ListCell[])[];
  /** what is said where there is no row */
  readonly empty: string;
}
