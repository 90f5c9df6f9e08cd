/** Memories before they are merged: `next` has a row of cells for each. */
export interface Table {
  readonly cells: number;
  readonly next: number[];
  readonly closes: boolean[];
}
