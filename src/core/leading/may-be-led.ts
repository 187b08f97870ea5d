import type { LineEntry } from '../plan-shape.ts';

/** Whether a person may lead a line elsewhere: a new one, and not the trunk, which goes where its layout leads it. */
export const mayBeLed = ({ kind, kept, places }: Pick<LineEntry, 'kind' | 'kept' | 'places'>): boolean =>
  kept === undefined && kind !== 'trunk' && places.length > 0;
