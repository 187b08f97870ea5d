import type { TypedIn } from '../../boat/measures.ts';
import { settingFigures } from '../../facts/setting-figures.ts';
import type { TypedEntry } from '../../settings-sheet-shape.ts';
import { depthUnitM } from '../../units/sea-units.ts';
import type { Wanted } from './sheet-input.ts';

/** A figure read off a unit, in metres where it is a length. */
export const siOf = ({ figure, in: unit }: Pick<TypedIn, 'figure' | 'in'>): number =>
  unit === 'm' || unit === 'ft' || unit === 'fm' ? figure * depthUnitM[unit] : figure;

/** How far what stands in a unit may lie from what should before it disagrees. */
const slackOf = ({ what }: Wanted): number => {
  if (what === 'log-factor') return settingFigures['factor-agrees'].value;
  return what === 'wind-offset' || what === 'radar-heading-line'
    ? settingFigures['angle-agrees'].value
    : settingFigures['length-agrees'].value;
};

const standing = (entry: Wanted, found: TypedIn): TypedEntry => {
  const shown = { figure: String(found.figure).replace('-', '−'), in: found.in };
  return {
    ...entry,
    stands: { shown, agrees: entry.is !== undefined && Math.abs(siOf(found) - entry.is) <= slackOf(entry) },
  };
};

/** What to type with what was read off each unit; of several offsets in one unit it is beside the one that is set there. */
export const withWhatStands = (entries: readonly Wanted[], typed: readonly TypedIn[]): TypedEntry[] => {
  const foundFor = new Map<Wanted, TypedIn>();
  for (const found of typed) {
    const same = entries.filter(({ kit, what }) => kit === found.unit && what === found.what);
    const entry = same.find(({ setElsewhere }) => setElsewhere === undefined) ?? same[0];
    if (entry !== undefined) foundFor.set(entry, found);
  }
  return entries.map((entry) => {
    const found = foundFor.get(entry);
    return found === undefined ? entry : standing(entry, found);
  });
};
