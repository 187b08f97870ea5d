import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ListTable } from '../table/list-table.ts';
import { plateMaterial } from '../templates/fit-words.ts';

type Named = readonly { readonly id: string; readonly name: string }[];
const nameIn = (list: Named, id: string): string => list.find((one) => one.id === id)?.name ?? id;

/** Every plate to be made: over what, how large, of what, with how many screws. */
export const plateList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'plates',
  title: 'Plates to make',
  says: 'Adapter plates carry a new unit over a hole that is too large for it, blind plates close one. No steel near a compass.',
  columns: [
    { id: 'plate', head: 'plate', kind: 'label', share: 1.2 },
    { id: 'over', head: 'over', share: 2.2 },
    { id: 'width', head: 'wide', unit: 'mm', kind: 'figure', share: 0.7 },
    { id: 'height', head: 'high', unit: 'mm', kind: 'figure', share: 0.7 },
    { id: 'of', head: 'of', share: 1.6 },
    { id: 'overlap', head: 'laps over', unit: 'mm', kind: 'figure', share: 0.8 },
    { id: 'cuts', head: 'cut-outs', kind: 'figure', share: 0.7 },
    { id: 'screws', head: 'own screws', kind: 'figure', share: 0.7 },
    { id: 'made', head: 'made', kind: 'tick', share: 0.5 },
  ],
  rows: plan.plates.map((plate) => [
    plate.id,
    plate.openings.map(({ opening }) => nameIn(boat.openings ?? [], opening)).join(', '),
    plate.outline.widthMm,
    plate.outline.heightMm,
    plateMaterial(plate),
    plate.overlapMm,
    plate.cuts.length,
    plate.screws.filter(({ of }) => of === undefined).length,
    undefined,
  ]),
  empty: 'No plate is needed.',
});
