import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Kit, Place } from '../../boat/boat-schema.ts';
import { limitValue } from '../../boat/limit-value.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import type { Sheet } from '../../boat/sheet.ts';
import type { KitSite } from '../../boat/site.ts';
import { throughHullKinds } from '../../facts/isolation-figures.ts';
import { sensorSiting } from '../../facts/sensor-figures.ts';
import type { SensorCheck } from '../../sensor-shape.ts';
import { feels } from './feels.ts';
import { leastAheadM } from './least-ahead.ts';
import { tiltVerdict } from './tilt-verdict.ts';

interface Sits {
  readonly index: BoatIndex;
  readonly unit: Kit;
  readonly sheet: Sheet;
  readonly place: Place;
  readonly site: KitSite;
}

const atLeast = (
  check: SensorCheck['check'],
  unit: NonNullable<SensorCheck['unit']>,
  { measured, limit }: { readonly measured: number; readonly limit: number },
): SensorCheck => ({ check, verdict: measured < limit - 1e-9 ? 'bad' : 'ok', measured, limit, unit });

const ask = (check: SensorCheck['check']): SensorCheck => ({ check, verdict: 'ask' });

/** Where the waterline is not known, the whole length is the safe one to take a tenth of. */
const propeller = ({ index, place }: Sits): SensorCheck => {
  const { lengthM, underwater } = index.boat.hull;
  if (underwater?.propellerXM === undefined) return ask('ahead-of-propeller');
  const measured = place.xM - underwater.propellerXM;
  return atLeast('ahead-of-propeller', 'm', { measured, limit: leastAheadM(underwater.waterlineM ?? lengthM) });
};

const keeled: ReadonlySet<string> = new Set(['sloop', 'ketch']);

const keelChecks = ({ index, place, sheet }: Sits): SensorCheck[] => {
  const { kind, underwater } = index.boat.hull;
  const keel = underwater?.keel;
  if (keel === undefined) return keeled.has(kind) ? [ask('from-keel')] : [];
  const alongM = Math.max(keel.fromXM - place.xM, place.xM - keel.toXM, 0);
  const checks = [
    atLeast('from-keel', 'm', { measured: Math.hypot(alongM, place.yM), limit: sensorSiting.fromKeel.value }),
  ];
  if (!feels(sheet).speed) return checks;
  const aheadM = place.xM - keel.toXM;
  return [...checks, atLeast('ahead-of-keel', 'm', { measured: aheadM, limit: sensorSiting.wheelAheadOfKeel.value })];
};

const centreline = ({ index, place }: Sits): SensorCheck[] => {
  // each hull of a catamaran has a centreline of its own, which her file does not give
  if (index.boat.hull.kind === 'catamaran') return [];
  const [measured, limit] = [Math.abs(place.yM), index.boat.hull.beamM * sensorSiting.offCentreline.value];
  return [{ check: 'off-centreline', verdict: measured > limit ? 'bad' : 'ok', measured, limit, unit: 'm' }];
};

const headroom = ({ site }: Sits): SensorCheck =>
  site.headroomMm === undefined
    ? ask('headroom')
    : atLeast('headroom', 'mm', { measured: site.headroomMm, limit: sensorSiting.headroom.value });

const tilt = ({ index, site }: Sits): SensorCheck => {
  if (site.tiltDeg === undefined) return site.tiltBy === undefined ? ask('tilt') : { check: 'tilt', verdict: 'ok' };
  const limit = limitValue(index.boat, 'transducer-tilt');
  const isUpright = site.tiltBy !== undefined || tiltVerdict({ tiltDeg: site.tiltDeg, mostDeg: limit }) === 'ok';
  return { check: 'tilt', verdict: isUpright ? 'ok' : 'bad', measured: site.tiltDeg, limit, unit: '°' };
};

const laminate = ({ index, site, sheet }: Sits): SensorCheck[] => {
  const { material } = index.boat.hull;
  const isLaid = material === 'grp' || material === 'other';
  if (site.laminate === undefined) return isLaid ? [ask('laminate')] : [];
  const wants = sheet.sensor?.inHull === true ? ['solid'] : ['solid', 'core-with-ring'];
  return [{ check: 'laminate', verdict: wants.includes(site.laminate) ? 'ok' : 'bad' }];
};

/** Whether a through-hull unit goes from the same place: its housing may be meant to stay. */
const follows = ({ index, place }: Sits): boolean =>
  index.boat.kit.some(
    (other) =>
      other.fate === 'goes' &&
      other.place === place.id &&
      throughHullKinds.has(index.sheetOf.get(other.id)?.kind ?? ''),
  );

const housing = (sits: Sits): SensorCheck[] => {
  if (sits.unit.fate !== 'comes') return [];
  if (sits.site.housing !== undefined)
    return [{ check: 'housing', verdict: sits.site.housing === 'old' ? 'bad' : 'ok' }];
  return follows(sits) ? [ask('housing')] : [];
};

const material = ({ index, sheet }: Sits): SensorCheck[] =>
  index.boat.hull.material === 'wood' && sheet.earthing?.body === 'plastic'
    ? [{ check: 'material', verdict: 'bad' }]
    : [];

/** Only what comes is asked about in all: what stays has worked where it sits. */
const underWater = (sits: Sits): SensorCheck[] => {
  const { sheet, unit } = sits;
  const checks = [
    propeller(sits),
    ...keelChecks(sits),
    ...centreline(sits),
    ...(feels(sheet).depth ? [tilt(sits)] : []),
    ...laminate(sits),
    ...(sheet.sensor?.inHull === true ? [] : [headroom(sits), ...housing(sits), ...material(sits)]),
  ];
  return unit.fate === 'comes' ? checks : checks.filter(({ verdict }) => verdict !== 'ask');
};

const inTheAirKinds: ReadonlySet<string> = new Set(['radio-antenna', 'position-antenna', 'radar', 'camera', 'beacon']);

/** What stands within half a metre of a wind head and higher; what shares its place is somebody’s care already. */
const inTheAir = ({ index, place }: Sits): SensorCheck[] => {
  const last = lastPhase(index.boat);
  const near = index.boat.kit.flatMap((other) => {
    const there = index.places.get(other.place);
    if (there === undefined || there.id === place.id || !isAboard(other, last)) return [];
    if (!inTheAirKinds.has(index.sheetOf.get(other.id)?.kind ?? '') || there.zM < place.zM) return [];
    const measured = Math.hypot(there.xM - place.xM, there.yM - place.yM);
    return measured < sensorSiting.windClear.value ? [{ by: other.id, measured }] : [];
  });
  const [nearest] = near.sort((one, other) => one.measured - other.measured || (one.by < other.by ? -1 : 1));
  return nearest === undefined
    ? [{ check: 'clear-air', verdict: 'ok' }]
    : [{ check: 'clear-air', verdict: 'bad', ...nearest, limit: sensorSiting.windClear.value, unit: 'm' }];
};

/** Everything that is looked at where a sensor of depth, speed or wind sits. */
export const sensorChecks = (index: BoatIndex, unit: Kit, is: 'depth' | 'speed' | 'wind'): SensorCheck[] => {
  const [sheet, place] = [index.sheetOf.get(unit.id), index.places.get(unit.place)];
  if (sheet === undefined || place === undefined) return [];
  const sits: Sits = { index, unit, sheet, place, site: unit.site ?? {} };
  return is === 'wind' ? inTheAir(sits) : underWater(sits);
};
