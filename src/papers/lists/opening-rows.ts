import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Opening } from '../../core/boat/opening.ts';
import { shortName } from '../../core/boat/short-name.ts';

/** One opening as a list shows it. */
export interface OpeningRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
  readonly opening: Opening;
}

const sizeWords = ({ hole: { shape, widthMm, heightMm } }: Opening): string =>
  shape === 'round' ? `round ${widthMm} mm` : `${widthMm} × ${heightMm} mm`;

/** Every opening of a boat: where it is, how large, and what comes there. */
export const openingRows = ({ openings = [], places, kit }: Boat): OpeningRow[] =>
  openings.map((opening) => {
    const place = places.find(({ id }) => id === opening.place);
    const unit = kit.find(({ id }) => id === opening.for);
    const comes = unit === undefined ? 'nothing comes there' : `for ${shortName(unit.name)}`;
    return {
      key: opening.id,
      what: opening.name,
      fact: `${shortName(place?.name ?? opening.place)}, ${sizeWords(opening)}, ${comes}`,
      lights: [opening.place, ...(opening.for === undefined ? [] : [opening.for])],
      opening,
    };
  });
