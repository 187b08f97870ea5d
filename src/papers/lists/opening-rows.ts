import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Opening } from '../../core/boat/opening.ts';
import { shortName } from '../../core/boat/short-name.ts';
import type { FitEntry } from '../../core/fits-shape.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { reasonWords, verdictWords } from '../templates/fit-words.ts';

/** One opening as a list shows it. */
export interface OpeningRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  /** what to do, and why; absent while nothing is computed of it yet */
  readonly toDo?: string;
  readonly why?: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
  readonly opening: Opening;
  readonly fit?: FitEntry;
}

const sizeWords = ({ hole: { shape, widthMm, heightMm } }: Opening): string =>
  shape === 'round' ? `round ${widthMm} mm` : `${widthMm} × ${heightMm} mm`;

/** Every opening of a boat: where it is, how large, what comes there, and what is to be done for it. */
export const openingRows = ({ openings = [], places, kit }: Boat, plan: Pick<Plan, 'fits' | 'plates'>): OpeningRow[] =>
  openings.map((opening) => {
    const place = places.find(({ id }) => id === opening.place);
    const unit = kit.find(({ id }) => id === opening.for);
    const fit = plan.fits.find((one) => one.opening === opening.id);
    const comes = unit === undefined ? 'nothing comes there' : `for ${shortName(unit.name)}`;
    return {
      key: opening.id,
      what: opening.name,
      fact: `${shortName(place?.name ?? opening.place)}, ${sizeWords(opening)}, ${comes}`,
      ...(fit === undefined ? {} : { toDo: verdictWords(fit, plan), why: reasonWords(fit), fit }),
      lights: [opening.place, ...(opening.for === undefined ? [] : [opening.for])],
      opening,
    };
  });
