import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Boat, Kit, Place } from '../../boat/boat-schema.ts';
import type { Sheet } from '../../boat/sheet.ts';
import { scannerFigures, takenFor } from '../../facts/antenna-figures.ts';
import { metricConductors } from '../../facts/conductors.ts';
import { radarBeams } from '../../facts/radar-figures.ts';
import type { FeedEntry } from '../../plan-shape.ts';
import type { Radar } from '../../radar-shape.ts';
import { horizonNm } from '../antennas/horizon.ts';
import type { OutsideUnit } from '../outside-units.ts';
import { peopleAboard } from '../people.ts';
import { besideM } from './bearings.ts';
import { heeledBeam } from './heeled-beam.ts';
import { blindM, nearZoneM } from './near-zone.ts';
import { radarFeedDropV } from './radar-feed.ts';
import { radarNeighbours } from './radar-neighbours.ts';
import { peopleAtRadar, radarPeopleM } from './radar-people.ts';
import { radarShadows } from './radar-shadows.ts';
import { sectorVerdict } from './shadow-sectors.ts';

const beamOf = ({ scanner }: Sheet): Pick<Radar, 'beamDeg' | 'beamBy'> => {
  if (scanner?.verticalBeamDeg !== undefined) return { beamDeg: scanner.verticalBeamDeg, beamBy: 'sheet' };
  const kilowatts = scanner?.sends === 'pulses' ? scanner.peakKw : undefined;
  if (kilowatts === undefined) return { beamDeg: radarBeams.dome.value, beamBy: 'kind' };
  const kind = kilowatts <= 2 ? 'pulse-2kw' : kilowatts < 6 ? 'pulse-4kw' : 'pulse-6-to-25kw';
  return { beamDeg: radarBeams[kind].value, beamBy: 'kind' };
};

const sailing: ReadonlySet<Boat['hull']['kind']> = new Set(['sloop', 'ketch']);
const heelsDeg = [10, 20];

const heelsOf = ({ hull }: Boat, heightM: number, beamDeg: number): Pick<Radar, 'heel'> => {
  if (!sailing.has(hull.kind)) return {};
  const heel = heelsDeg.map((heelDeg) => {
    const { weatherM, lost } = heeledBeam({ heightM, beamDeg, heelDeg });
    return {
      heelDeg,
      ...(Number.isFinite(weatherM) ? { weatherM } : {}),
      ...(lost === undefined ? {} : { lostFromDeg: lost.fromDeg, lostToDeg: lost.toDeg }),
    };
  });
  return { heel };
};

/** The sea past the bow, from the bow on, as a scanner looks over the highest of the hull there. */
const bowOf = ({ hull }: Boat, { xM, zM }: Place): Pick<Radar, 'bowSeenM' | 'bowLimitM'> => {
  const bowLimitM = Math.min(scannerFigures.bowSeen.value, scannerFigures.bowLengths.value * hull.lengthM);
  const heights = (hull.outline?.side ?? []).filter(([alongM]) => alongM > 0.95 * hull.lengthM).map(([, upM]) => upM);
  const bowM = Math.max(0, ...heights);
  if (bowM === 0 || zM <= bowM) return { bowLimitM };
  const toBowM = hull.lengthM - xM;
  return { bowSeenM: (zM * toBowM) / (zM - bowM) - toBowM, bowLimitM };
};

const feedOf = (unit: Kit, feeds: readonly FeedEntry[]): Pick<Radar, 'feed'> => {
  const feed = feeds.find(({ to }) => to.split('.')[0] === unit.id);
  const conductor = metricConductors.findLast(({ areaMm2 }) => areaMm2 <= (feed?.areaMm2 ?? 0) + 1e-9);
  if (feed?.areaMm2 === undefined || conductor === undefined) return {};
  const peakA = feed.peakA ?? feed.loadA;
  const ohmPerKm = (conductor.class5Tinned * conductor.areaMm2) / feed.areaMm2;
  return {
    feed: { line: feed.line, peakA, dropV: radarFeedDropV({ lengthM: feed.lengthM, ohmPerKm, currentA: peakA }) },
  };
};

/** What is reckoned of one radar: its beam, who stands in it, what stands in its way, and what feeds it. */
export const radarOf = ({
  index,
  unit,
  sheet,
  place,
  feeds,
}: {
  readonly index: BoatIndex;
  readonly unit: Kit;
  readonly sheet: Sheet;
  readonly place: Place;
  readonly feeds: readonly FeedEntry[];
}): Radar => {
  const { beamDeg, beamBy } = beamOf(sheet);
  const heightM = place.zM;
  const own: OutsideUnit = { unit, sheet, xM: place.xM, yM: place.yM, fromM: heightM, toM: heightM };
  const acrossM = sheet.scanner?.acrossM ?? takenFor.scannerM.value;
  const nearM = nearZoneM({ heightM, beamDeg });
  const shadows = radarShadows(index, { own, beamDeg, acrossM });
  const { sectors, ...verdict } = sectorVerdict(shadows);
  return {
    beamDeg,
    beamBy,
    horizonNm: horizonNm('radar', heightM),
    nearM,
    blindM: blindM(nearM, sheet.scanner?.leastRangeM),
    ...heelsOf(index.boat, heightM, beamDeg),
    ...radarPeopleM(sheet),
    people: peopleAtRadar(own, { beamDeg, people: peopleAboard(index) }),
    acrossM,
    shadows,
    sectors: [...sectors],
    ...verdict,
    ...bowOf(index.boat, place),
    neighbours: radarNeighbours(index, { own, acrossM }),
    ...feedOf(unit, feeds),
    degreeAtMileM: besideM(1, 1),
  };
};
