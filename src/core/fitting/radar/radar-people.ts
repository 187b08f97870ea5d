import type { Scanner } from '../../boat/aerial.ts';
import type { Sheet } from '../../boat/sheet.ts';
import { radarDistances } from '../../facts/radar-figures.ts';
import type { PersonAtRadar, Radar } from '../../radar-shape.ts';
import type { Person } from '../people.ts';
import { acrossM, type Upright } from '../upright.ts';
import { beamAt } from './near-zone.ts';

/** How far people keep off a scanner: by its plate, else by the table of its size; a solid-state one has no such table. */
export const radarPeopleM = (sheet: Sheet): Pick<Radar, 'peopleM' | 'peopleBy'> => {
  const scanner: Scanner | undefined = sheet.scanner;
  if (scanner?.peopleM !== undefined)
    return { peopleM: scanner.peopleM, peopleBy: sheet.source === 'typical' ? 'typical' : 'plate' };
  const row = radarDistances.rows.find(({ kilowatts }) => kilowatts >= (scanner?.peakKw ?? Number.POSITIVE_INFINITY));
  return row === undefined ? { peopleBy: 'unknown' } : { peopleM: row.at10WPerM2, peopleBy: 'size' };
};

/** Everybody who stands aboard, and the beam over or at their heads. */
export const peopleAtRadar = (
  at: Upright,
  { beamDeg, people }: { readonly beamDeg: number; readonly people: readonly Person[] },
): PersonAtRadar[] =>
  people.map((person) => {
    const distanceM = acrossM(at, person);
    const { fromM, toM } = beamAt({ heightM: at.fromM, beamDeg, distanceM });
    return {
      place: person.place,
      distanceM,
      headM: person.toM,
      beamFromM: fromM,
      beamToM: toM,
      inBeam: person.toM > fromM && person.fromM < toM,
      soleKnown: person.soleKnown,
    };
  });
