import type { BoatIndex } from '../../boat/boat-index.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import type { SourceKey } from '../../facts/sources.ts';
import type { FitEntry } from '../../fits-shape.ts';
import { waterAt } from '../../fitting/openings/water-at.ts';
import type { LaidInput, Observation, Rule } from '../rule.ts';
import { sourceWords, unitName } from '../rule-words.ts';
import { aboutFit, isSet } from './fit-words.ts';

interface Wet {
  readonly unit: string;
  readonly place: string;
  readonly water: NonNullable<FitEntry['water']>;
  readonly about: readonly string[];
  readonly source: SourceKey;
}

/** Faces in a panel. */
const faces = ({ plan }: LaidInput): Wet[] =>
  plan.fits.flatMap((fit): Wet[] => {
    const { unit, place, water } = fit;
    return unit === undefined || water === undefined || !isSet(fit)
      ? []
      : [{ unit, place, water, about: aboutFit(fit), source: 'practice-ip-at-helm' }];
  });

/** What stands in a housing of its own, where somebody knows its code; an opening speaks for what comes into it. */
const byThemselves = ({ index, plan }: LaidInput): Wet[] => {
  const inPanels = new Set(plan.fits.map(({ unit }) => unit));
  const last = lastPhase(index.boat);
  return index.boat.kit.flatMap((unit): Wet[] => {
    const [place, sheet] = [index.places.get(unit.place), index.sheetOf.get(unit.id)];
    if (place === undefined || sheet?.ipCode === undefined || inPanels.has(unit.id) || !isAboard(unit, last)) return [];
    const water = waterAt(place.exposure, sheet, 'by-itself');
    return water === undefined
      ? []
      : [{ unit: unit.id, place: place.id, water, about: [unit.id], source: 'choice-ip-by-itself' }];
  });
};

/** Whether somebody has read the code of this unit: a typical sheet only says what is usual. */
const isRead = (index: BoatIndex, { unit, water }: Wet): boolean =>
  water.has !== undefined && index.sheetOf.get(unit)?.source !== 'typical';

const observed = (index: BoatIndex, wet: Wet): Observation => {
  const { unit, water, source } = wet;
  const need = water.need.join(' and ');
  const place = index.places.get(wet.place)?.name ?? wet.place;
  const has = isRead(index, wet)
    ? `is ${water.has}`
    : water.has === undefined
      ? 'is of no IP code that is known'
      : `is usually ${water.has}`;
  return {
    about: wet.about,
    ...(isRead(index, wet) ? {} : { level: 'doubt' }),
    says: `${unitName(index, unit)} ${has}; at ${place} it should be ${need}.`,
    limit: { value: water.need.length, unit: `marks: ${need}`, source: sourceWords(source) },
    cure: isRead(index, wet)
      ? 'Choose one made for such a place, or find it a dry one. Codes above 6 do not stand for those below: IPX7 alone is no IPX6.'
      : 'Look its IP code up in its manual before it is ordered.',
  };
};

/** A unit must stand the water that comes to its place. */
export const ipTooLow: Rule = {
  id: 'fitting/ip-too-low',
  level: 'fault',
  title: 'A unit is not tight enough for the place it is in.',
  sources: ['iec-60529', 'practice-ip-at-helm', 'choice-ip-by-itself'],
  check: (input) => {
    const { index } = input;
    return (
      [...faces(input), ...byThemselves(input)]
        .filter(({ water }) => water.enough !== true)
        // what hangs there already, and of which nobody has read a code, has shown what it stands
        .filter((wet) => isRead(index, wet) || index.kit.get(wet.unit)?.fate === 'comes')
        .map((wet) => observed(index, wet))
    );
  },
};
