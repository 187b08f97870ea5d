import type { BoatIndex } from '../boat/boat-index.ts';
import { keptFor } from '../boat/kept-for.ts';
import { mastsOf } from '../ways/masts.ts';
import type { Upright } from './upright.ts';

/** A mast as it stands in the way of something, by the place at its foot. */
export interface MastUpright extends Upright {
  readonly id: string;
}

/** Every mast that cables of the boat file run in. It stands where its top is: the foot of the file may be a box beside it. */
export const mastUprights = keptFor((index: BoatIndex): readonly MastUpright[] =>
  mastsOf(index).map(({ foot, top }) => ({ id: foot.id, xM: top.xM, yM: top.yM, fromM: foot.zM, toM: top.zM })),
);
