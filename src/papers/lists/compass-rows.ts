import type { BoatIndex } from '../../core/boat/boat-index.ts';
import type { CompassEntry, CompassFeed, CompassUnit } from '../../core/compass-shape.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { printCount } from './print-figure.ts';

/** One compass, or one thing that is near it, as a list shows it. */
export interface CompassRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

type Names = Pick<BoatIndex, 'kit' | 'buses'>;

/** A feed that turns a card by less is only counted. */
const toldFromDeg = 0.05;

const metres = (lengthM: number): string => `${lengthM.toFixed(2)} m`;
const degrees = (deg: number): string => (deg < 0.1 ? 'under 0.1°' : `${deg.toFixed(1)}°`);
const unitName = ({ kit }: Names, port: string): string => {
  const id = port.split('.')[0] ?? port;
  return kit.get(id)?.name ?? id;
};

const laidWords = ({ laid, laidBy }: CompassFeed): string => {
  if (laid === 'single') return 'a single wire';
  return laidBy === 'plan' ? 'a pair, as the plan buys it' : 'a pair';
};

const feedFact = (feed: CompassFeed, { allowedDeg }: CompassEntry): string =>
  `${feed.currentA.toFixed(1)} A in ${laidWords(feed)} at ${metres(feed.distanceM)}: ${feed.fieldUt.toFixed(2)} µT, ${degrees(feed.deviationDeg)} of ${allowedDeg.toFixed(1)}°${feed.tooNear ? `; keep it ${metres(feed.keepM)} off, or twist the two wires` : ''}`;

const unitFact = ({ distanceM, safeM, safeBy, tooNear }: CompassUnit): string => {
  const asked =
    safeBy === 'sheet'
      ? `its sheet asks for ${metres(safeM)}`
      : `nobody has read its plate, ${metres(safeM)} is ${safeBy === 'kind' ? 'usual for its kind' : 'taken'}`;
  return `at ${metres(distanceM)}, ${asked}${tooNear && safeBy === 'sheet' ? '; move it' : ''}`;
};

const headFact = ({ allowedDeg, horizontalUt, feeds, sumDeg }: CompassEntry): string => {
  const allowed = `may be turned ${allowedDeg.toFixed(1)}° where the Earth’s field is ${horizontalUt} µT`;
  if (feeds.length === 0) return `${allowed}; no feed within 5 m`;
  return `${allowed}; ${printCount(feeds.length, 'feed')} within 5 m turn it ${degrees(sumDeg)} should all add up`;
};

/** Units that are too near or whose plate nobody has read, each; those that stand as far off as they ask, together. */
const unitRows = (names: Names, { compass, units }: CompassEntry): CompassRow[] => {
  const isToSee = ({ tooNear, safeBy }: CompassUnit): boolean => tooNear || safeBy !== 'sheet';
  const far = units.filter((unit) => !isToSee(unit));
  const nearest = far.reduce<CompassUnit | undefined>(
    (most, unit) => (most === undefined || unit.distanceM < most.distanceM ? unit : most),
    undefined,
  );
  return [
    ...units.filter(isToSee).map((unit) => ({
      key: `${compass} ${unit.unit}`,
      what: unitName(names, unit.unit),
      fact: unitFact(unit),
      lights: [unit.unit, compass],
    })),
    ...(nearest === undefined
      ? []
      : [
          {
            key: `${compass} far`,
            what: `${printCount(far.length, 'unit')} near it`,
            fact: `as far off as ${far.length === 1 ? 'its sheet asks' : 'their sheets ask'}; the nearest is ${unitName(names, nearest.unit)}, ${unitFact(nearest)}`,
            lights: [...far.map(({ unit }) => unit), compass],
          },
        ]),
  ];
};

/** Every steering compass with what may turn it, then the feeds that do so noticeably, strongest first, and the units near it. */
export const compassRows = (names: Names, { compass }: Pick<Plan, 'compass'>): CompassRow[] =>
  compass.flatMap((entry): CompassRow[] => {
    const name = unitName(names, entry.compass);
    const strong = entry.feeds
      .filter(({ deviationDeg, laid }) => deviationDeg >= toldFromDeg || laid === 'single')
      .sort((one, other) => other.deviationDeg - one.deviationDeg);
    return [
      { key: entry.compass, what: name, fact: headFact(entry), lights: [entry.compass] },
      ...strong.map((feed) => ({
        key: `${entry.compass} ${feed.line}`,
        what: `Feed of ${names.buses.get(feed.to)?.name ?? unitName(names, feed.to)}`,
        fact: feedFact(feed, entry),
        lights: [feed.line, entry.compass],
      })),
      ...unitRows(names, entry),
    ];
  });
