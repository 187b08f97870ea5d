import type { BoatIndex } from '../../boat/boat-index.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import { vitalKinds } from '../../facts/supply-figures.ts';

const radioKinds: readonly string[] = vitalKinds.radio;

/** The radios aboard when the refit is done, by id. */
export const radiosAboard = (index: BoatIndex): readonly string[] =>
  index.boat.kit
    .filter((unit) => isAboard(unit, lastPhase(index.boat)))
    .filter(({ id }) => radioKinds.includes(index.sheetOf.get(id)?.kind ?? ''))
    .map(({ id }) => id);
