import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ListTable } from '../table/list-table.ts';
import { type CableLabel, cableLabels, type LabelWish } from './cable-labels.ts';

/** What stands under the id, in full. */
export const underWords = ({ half, far, fuse, dateIso }: CableLabel): string =>
  [half, far[0], fuse, dateIso].flatMap((text) => text ?? []).join(', ');

/**
 * Every label in a row of its own: what stands on it, where it goes, how long it must be, and what its code says. As a file it
 * is what the program of a label printer takes.
 */
export const labelList = (boat: Boat, plan: Plan, wish: LabelWish = {}): ListTable => ({
  id: 'labels',
  title: 'Labels',
  says: 'One row a label, cable after cable. The length is once round the cable and the overlap.',
  columns: [
    { id: 'id', head: 'id', kind: 'label', share: 0.5, once: true },
    { id: 'text', head: 'under it', share: 2 },
    { id: 'side', head: 'end or side', share: 0.8 },
    { id: 'where', head: 'where it goes', share: 2.6 },
    { id: 'wrap', head: 'length', unit: 'mm', kind: 'figure', digits: 1, share: 0.6 },
    { id: 'code', head: 'code', printed: false },
  ],
  rows: cableLabels(boat, plan, wish).map((label) => [
    label.id,
    underWords(label),
    label.side,
    label.where,
    label.wrapMm,
    label.code,
  ]),
  empty: 'No cable is planned yet.',
});
