import { scannerFigures } from '../../facts/antenna-figures.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart, unitName } from '../rule-words.ts';

const deg = (value: number): string => `${Math.round(value)}°`;

/** An arc that is as narrow is told by its middle. */
const narrowDeg = 2;

const arcWords = ({ fromDeg, toDeg }: { fromDeg: number; toDeg: number }): string => {
  const wideDeg = (toDeg - fromDeg + 360) % 360;
  const middleDeg = Math.round(fromDeg + wideDeg / 2) % 360;
  return wideDeg < narrowDeg ? `about ${middleDeg}°` : `${deg(fromDeg)} to ${deg(toDeg)}`;
};

/** Mast and units before a scanner: what the picture does not show, and what to blank so that the beam does not return from there. */
export const shadowSectors: Rule = {
  id: 'antennas/shadow-sectors',
  level: 'advice',
  title: 'Something shadows a radar where a ship’s would have to see.',
  sources: ['imo-sn1-271', 'practice-blanking', 'choice-widths'],
  check: ({ index, plan }) =>
    plan.sites.flatMap(({ unit, radar }): Observation[] => {
      if (radar === undefined || radar.guidelineMet) return [];
      const by = radar.shadows.map((shadow) =>
        shadow.kind === 'mast'
          ? `the mast at ${index.places.get(shadow.by)?.name ?? shadow.by}`
          : unitName(index, shadow.by),
      );
      const why = radar.isAhead
        ? `ships want none from ahead to ${scannerFigures.abaftBeam.value}° on either side`
        : `ships want none over ${scannerFigures.oneSector.value}° and ${scannerFigures.allSectors.value}° together`;
      return [
        {
          about: [unit],
          says: `${unitName(index, unit)} is shadowed at ${radar.sectors.map(arcWords).join(' and ')}, counted clockwise from ahead, by ${[...new Set(by)].join(', ')}; ${why}.`,
          measured: { value: radar.largestDeg, unit: '°' },
          limit: figurePart(scannerFigures.oneSector),
          cure: `Blank ${radar.shadows.map(({ blankFromDeg, blankToDeg }) => arcWords({ fromDeg: blankFromDeg, toDeg: blankToDeg })).join(' and ')} in the set if it can; look that way yourself, or swing the bow now and then.`,
        },
      ];
    }),
};
