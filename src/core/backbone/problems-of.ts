import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { type BoatIndex, indexBoat } from '../boat/boat-index.ts';
import type { Boat, Bus, GradeId, Place, Way } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { limitIn } from '../boat/limit-in.ts';
import { readyLengthsMm } from '../boat/ready-lengths.ts';
import type { Panel } from '../boat/supply.ts';
import { busLimits } from '../facts/bus-limits.ts';
import { feedLead } from '../facts/cable-grades.ts';
import { defaultTail, supplyDefaults } from '../facts/defaults.ts';
import { typicalPrices } from '../facts/prices.ts';
import { allowsLine, trunkTimes } from '../ways/allowed-lines.ts';
import { makeRouter, type Router } from '../ways/routes.ts';
import { wayLengths } from '../ways/way-lengths.ts';
import { busDevices, busPorts } from './bus-devices.ts';
import { canonicalJson } from './canonical-json.ts';
import { feedPanel } from './feed-panel.ts';
import { heldWalk } from './held-walk.ts';
import { panelMv, panelNominalV } from './panel-volts.ts';
import type { Problem, ProblemFeed, ProblemGrade, ProblemPlace, ProblemWay } from './problem.ts';
import { feedRoute } from './settled-leads.ts';

/**
 * The layout problem of every bus of a boat as she stands, or of those asked for, for the last phase, sorted by bus; see
 * `layoutProblems`. Pure.
 */
export const problemsOf = (boat: Boat, only?: ReadonlySet<string>): Problem[] => {
  const index = indexBoat(boat);
  const router = makeRouter(index);
  return [...index.buses.values()]
    .filter(({ id }) => only === undefined || only.has(id))
    .sort((one, other) => byCodeUnit(one.id, other.id))
    .map((bus) => layoutProblem({ index, router, bus }));
};

const layoutProblem = ({
  index,
  router,
  bus,
}: {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly bus: Bus;
}): Problem => {
  const { boat } = index;
  const ports = busPorts(index, bus.id);
  const panel = feedPanel({ index, router, bus: bus.id, devicePlaces: ports.map(({ place }) => place) });
  const prices = boat.prices ?? typicalPrices;
  const places = [...boat.places].sort((one, other) => byCodeUnit(one.id, other.id));
  // A walk that is fixed says itself where the trunk lies, also where none may be led any more.
  const fixed = boat.pins?.layouts?.[bus.id]?.walk;
  const walked = new Set(fixed?.flatMap(({ via }) => via ?? []));
  const ways = problemWays({ index, walked, hourPrice: prices.hour });
  const held = fixed === undefined ? heldWalk({ index, bus: bus.id, ways }) : undefined;
  const body: Omit<Problem, 'hash'> = {
    format: 1,
    bus: bus.id,
    places: places.map(problemPlace),
    ways,
    devices: busDevices({
      index,
      router,
      bus: bus.id,
      ports,
      nominalV: panel === undefined ? supplyDefaults.nominalV.value : panelNominalV(index, panel),
      leastMv: thousandths(limitIn(busLimits, boat, 'nmea2000-device-volts-least')),
    }),
    grades: gradesOf(bus).map((grade) => problemGrade({ boat, grade })),
    limits: {
      dropMm: thousandths(limitIn(busLimits, boat, 'nmea2000-one-drop')),
      dropsMm: thousandths(limitIn(busLimits, boat, 'nmea2000-all-drops')),
      devices: Math.floor(limitIn(busLimits, boat, 'nmea2000-devices')),
    },
    pieces: readyLengthsMm({ boat, kind: 'drop' }),
    prices: { tee: prices.tee, terminator: prices.terminator, feed: prices.feed },
    feed: problemFeed({ index, router, bus: bus.id, places, panel, leadPerM: prices.feedLeadPerM }),
    ...(held === undefined ? {} : { held }),
  };
  return { ...body, hash: bytesToHex(sha256(utf8ToBytes(canonicalJson(body)))) };
};

const problemFeed = ({
  index,
  router,
  bus,
  places,
  panel,
  leadPerM,
}: {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly bus: string;
  readonly places: readonly Place[];
  readonly panel: Panel | undefined;
  readonly leadPerM: number;
}): ProblemFeed => {
  const lead = { leadPerM, leadMicroOhmPerM: Math.round(feedLead.ohmPerM.value * 1_000_000) };
  if (panel === undefined) return { mv: 0, ...lead, reach: [] };
  const mv = panelMv(index, panel);
  const reach = feedReach({ index, router, bus, places, panel });
  return { mv, lostMv: lostMv(index.boat, mv), ...lead, reach };
};

/** What may be lost on the way to a device: a regulated supply may lose more than a battery. */
const lostMv = (boat: Boat, feedMv: number): { warn: number; fail: number } => {
  const limit = (id: 'warn' | 'fail' | 'regulated-fail'): number =>
    thousandths(limitIn(busLimits, boat, `nmea2000-lost-volts-${id}`));
  const isRegulated = feedMv >= thousandths(limitIn(busLimits, boat, 'nmea2000-regulated-volts'));
  return isRegulated
    ? { warn: limit('regulated-fail'), fail: limit('regulated-fail') }
    : { warn: limit('warn'), fail: limit('fail') };
};

const thousandths = (value: number): number => Math.round(value * 1000);

/** A trunk may end where a terminator can be reached; aloft only at a tee, for there it sits on the last one. */
const problemPlace = (place: Place): ProblemPlace => ({
  id: place.id,
  tees: place.tees,
  end: place.reach === 'open' || place.reach === 'panel' || (place.reach === 'aloft' && place.tees),
  spares: place.tees ? (place.spares ?? 0) : 0,
});

const problemWays = ({
  index,
  walked,
  hourPrice,
}: {
  readonly index: BoatIndex;
  readonly walked: ReadonlySet<string>;
  readonly hourPrice: number;
}): readonly ProblemWay[] => {
  const lengths = wayLengths({ ways: index.boat.ways, places: index.places });
  const problemWay = (way: Way): ProblemWay[] => {
    const length = lengths.get(way.id);
    const trunk = trunkTimes(way);
    const drop = allowsLine(way, 'drop');
    if (length === undefined || (trunk === 0 && !drop && !walked.has(way.id))) return [];
    const [a, b] = [...way.ends].sort(byCodeUnit);
    if (a === undefined || b === undefined) return [];
    const extra = Math.round((way.hours ?? 0) * hourPrice);
    return [{ id: way.id, a, b, mm: length.mm, maxMm: length.longestMm, trunk, drop, extra }];
  };
  return index.boat.ways.flatMap(problemWay).sort((one, other) => byCodeUnit(one.id, other.id));
};

const gradesOf = (bus: Bus): readonly GradeId[] =>
  bus.grade === undefined ? (['heavy', 'light', 'mid'] as const) : [bus.grade];

const problemGrade = ({ boat, grade }: { readonly boat: Boat; readonly grade: GradeId }): ProblemGrade => {
  const own = boat.prices;
  const perM = own === undefined ? typicalPrices.byGrade[grade] : (own.byGrade?.[grade] ?? own);
  return {
    id: grade,
    warnMm: thousandths(limitIn(busLimits, boat, `nmea2000-trunk-${grade}-warn`)),
    failMm: thousandths(limitIn(busLimits, boat, `nmea2000-trunk-${grade}-fail`)),
    microOhmPerM: Math.round(limitIn(busLimits, boat, `nmea2000-ohm-${grade}`) * 1_000_000),
    maxMa: thousandths(limitIn(busLimits, boat, `nmea2000-current-${grade}`)),
    trunkPerM: perM.trunkPerM,
    dropPerM: perM.dropPerM,
  };
};

/** The feed lead to each place with tees: its route and the tail at the panel. */
const feedReach = ({
  places,
  panel,
  ...ask
}: {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly bus: string;
  readonly places: readonly Place[];
  readonly panel: Panel;
}): ProblemFeed['reach'] => {
  const tailMm = thousandths(defaultTail.dc.value);
  return places.flatMap((place) => {
    const route = place.tees ? feedRoute(ask, { panel, to: place.id }) : undefined;
    if (route === undefined) return [];
    return [{ place: place.id, mm: route.mm + tailMm, maxMm: route.longestMm + tailMm }];
  });
};
