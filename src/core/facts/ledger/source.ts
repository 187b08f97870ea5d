/** How far a figure can be trusted; shown with it. */
export type Standing = 'published' | 'computed' | 'common practice' | 'from memory' | 'project choice';

/** Where a figure comes from. */
export interface Source {
  readonly standing: Standing;
  readonly text: string;
}
