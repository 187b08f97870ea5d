import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { BusEntry, Plan, ReadingEntry } from '../../../core/plan-shape.ts';
import type { Tested } from '../../../core/proof/dock/tested.ts';
import type { PlanWork } from '../../../core/work-shape.ts';
import { cardBoat } from '../../../papers/cards/card-boat.ts';
import { cablesToBuy } from '../../../papers/lists/cables-to-buy.ts';
import { feedIsOpen } from '../../../papers/lists/feed-is-open.ts';
import { layoutWords } from '../../../papers/lists/layout-words.ts';
import { unfedRows } from '../../../papers/lists/unfed-rows.ts';
import { voltsAtLoad } from '../../../papers/power/volts-at-load.ts';
import { workingDays } from '../../../papers/work/working-days.ts';
import type { StepId } from '../route.ts';
import { words } from './words.ts';

/** One waypoint of the course line. */
export interface Waypoint {
  readonly step: StepId;
  readonly name: string;
  readonly fact: string;
  readonly state: 'done' | 'open';
}

const boatWaypoint = (boat: Boat): Waypoint => {
  const guessed = boat.ways.filter((way) => way.length.how === 'guessed').length;
  const assumed = boat.ways.filter((way) => way.known === 'assumed').length;
  const wanting = [...(guessed > 0 ? [words.toTape(guessed)] : []), ...(assumed > 0 ? [words.toSee(assumed)] : [])];
  return {
    step: 'boat',
    name: words.step.boat,
    fact: [words.places(boat.places.length), ...(wanting.length > 0 ? wanting : [words.noLengthGuessed])].join(', '),
    state: wanting.length === 0 && boat.places.length > 0 ? 'done' : 'open',
  };
};

const kitWaypoint = (boat: Boat): Waypoint => {
  const counts = (['comes', 'stays', 'goes'] as const).flatMap((fate) => {
    const count = boat.kit.filter((unit) => unit.fate === fate).length;
    return count === 0 ? [] : [words.fate[fate](count)];
  });
  const typical = new Set(boat.sheets.filter((sheet) => sheet.source === 'typical').map((sheet) => sheet.id));
  const rests = boat.kit.some((unit) => unit.fate !== 'goes' && typical.has(unit.sheet));
  return {
    step: 'kit',
    name: words.step.kit,
    fact: boat.kit.length === 0 ? words.nothingAboard : counts.join(', '),
    state: boat.kit.length > 0 && !rests ? 'done' : 'open',
  };
};

const weakestFirst = ['typical', 'manual', 'recording', 'proved'] as const;

/** On what the arriving readings rest, all together: the weakest of them says it. */
const restsOn = (readings: readonly ReadingEntry[]): string | undefined => {
  const weakest = weakestFirst.find((rest) => readings.some((entry) => entry.arrives && entry.rests === rest));
  return weakest === undefined ? undefined : words.rests[weakest];
};

const needsWaypoint = (plan: Plan): Waypoint => {
  const total = plan.readings.length;
  const arrive = plan.readings.filter((entry) => entry.arrives).length;
  const rests = restsOn(plan.readings);
  return {
    step: 'needs',
    name: words.step.needs,
    fact:
      total === 0
        ? words.nothingAsked
        : [words.arrive(arrive, total), ...(rests === undefined ? [] : [rests])].join(', '),
    state: total > 0 && arrive === total ? 'done' : 'open',
  };
};

const isSettled = (bus: BusEntry): boolean =>
  bus.layout.broken.length === 0 && (bus.layout.status === 'proven' || bus.layout.status === 'pinned');

const linesWaypoint = (plan: Plan): Waypoint => {
  const [first, ...more] = plan.buses;
  const open = plan.buses.filter((bus) => !isSettled(bus));
  const lost = plan.gaps.filter(({ kind }) => kind !== 'feed').length;
  const fact = (): string => {
    if (lost > 0) return words.noWay(lost);
    if (first === undefined) return words.noBackbone;
    if (more.length === 0) return layoutWords(first.layout).short;
    return [
      words.backbones(plan.buses.length),
      open.length === 0 ? words.allSettled : words.openOnes(open.length),
    ].join(', ');
  };
  return {
    step: 'lines',
    name: words.step.lines,
    fact: fact(),
    state: first !== undefined && open.length === 0 && lost === 0 ? 'done' : 'open',
  };
};

/** What lacks a feed matters before what is to be looked at, feeds and units short of volts, and these before the volts. */
const powerWaypoint = (boat: Boat, plan: Plan): Waypoint => {
  const unfed = unfedRows(cardBoat(boat), plan).length;
  const fed = plan.lines.filter(({ kind }) => kind === 'feed').length;
  const plugs = plan.loads.flatMap((load) => {
    const volts = voltsAtLoad(plan, load);
    return volts === undefined ? [] : [{ volts, isShort: volts < load.minV && load.source.by !== 'circuit' }];
  });
  const open = plan.feeds.filter(feedIsOpen).length + plugs.filter(({ isShort }) => isShort).length;
  const worst = plugs.length === 0 ? [] : [words.worstPlug(Math.min(...plugs.map(({ volts }) => volts)).toFixed(2))];
  const facts = [fed === 0 ? words.noFeed : words.feeds(fed), ...(open > 0 ? [words.toLookAt(open)] : worst)];
  return {
    step: 'power',
    name: words.step.power,
    fact: unfed > 0 ? words.unfed(unfed) : facts.join(', '),
    state: unfed === 0 && open === 0 && plan.feeds.length > 0 ? 'done' : 'open',
  };
};

/** Areas of rules that look at what goes into a hole, and at what works only in the right place. */
const fitAreas = new Set(['fitting', 'antennas', 'compass', 'sensors', 'settings']);

/** What a person must look at comes before how much there is. */
const fitWaypoint = ({ sites, findings }: Plan): Waypoint => {
  const open = findings.filter(
    ({ rule, level, accepted }) =>
      level !== 'advice' && accepted === undefined && fitAreas.has(rule.slice(0, rule.indexOf('/'))),
  ).length;
  const all = sites.length === 0 ? words.nothingPlaced : words.mustStandRight(sites.length);
  return {
    step: 'fit',
    name: words.step.fit,
    fact: open === 0 ? all : words.toLookAt(open),
    state: open === 0 && sites.length > 0 ? 'done' : 'open',
  };
};

/** What is ordered by a guess comes too short; ticks for what was ordered are not kept yet, so this step is never done. */
const buyWaypoint = (plan: Plan): Waypoint => {
  const cables = cablesToBuy(plan);
  const guessed = cables.filter((line) => line.guessed).length;
  const sure = guessed === 0 ? words.noLengthGuessed : words.byGuess(guessed);
  return {
    step: 'buy',
    name: words.step.buy,
    fact: cables.length === 0 ? words.noCable : `${words.cables(cables.length)}, ${sure}`,
    state: 'open',
  };
};

/** The papers were given to somebody, or nobody has them yet. */
const binderWaypoint = (boat: Boat): Waypoint => {
  const last = boat.revisions?.at(-1);
  return {
    step: 'binder',
    name: words.step.binder,
    fact: last === undefined ? words.notGivenOut : words.givenOut(last.mark, last.on),
    state: last === undefined ? 'open' : 'done',
  };
};

/** What came out wrong at the dock comes before how far the tests have come. */
const proveWaypoint = ({ tests }: Plan, tested: Tested | undefined): Waypoint => {
  const { tried, wrong } = tested ?? { tried: 0, wrong: 0 };
  const far = tested === undefined ? words.tests(tests.length) : words.tested(tried, tests.length);
  return {
    step: 'prove',
    name: words.step.prove,
    fact: tests.length === 0 ? words.nothingToTest : wrong > 0 ? words.foundWrong(wrong) : far,
    state: tests.length > 0 && tried === tests.length && wrong === 0 ? 'done' : 'open',
  };
};

/** How far the work has come; before it has begun, what it will take. */
const workWaypoint = (work: PlanWork | undefined, done: ReadonlyMap<string, string>): Waypoint => {
  const phases = work?.phases ?? [];
  const jobs = phases.flatMap((phase) => phase.jobs).filter(({ leftOut }) => leftOut === undefined);
  const finished = jobs.filter(({ id }) => done.has(id)).length;
  const darkH = phases.reduce((sum, { order }) => sum + (order?.cost.darkH ?? 0), 0);
  const days = phases.reduce((sum, phase) => sum + workingDays(phase).length, 0);
  const fact = (): string => {
    if (work === undefined) return words.counting;
    if (jobs.length === 0) return words.noWork;
    if (phases.some(({ stuck }) => stuck !== undefined)) return words.noOrder(jobs.length);
    return finished > 0
      ? words.jobsDone(finished, jobs.length)
      : words.work(jobs.length, days, Number(darkH.toFixed(1)));
  };
  return {
    step: 'work',
    name: words.step.work,
    fact: fact(),
    state: jobs.length > 0 && finished === jobs.length ? 'done' : 'open',
  };
};

/** The ten waypoints of a boat's course, each with the one fact that matters now; `tested` and `done`: how far her log says tests and jobs have come. */
export const courseFacts = ({
  boat,
  plan,
  tested,
  work = plan.work,
  done = new Map(),
}: {
  boat: Boat;
  plan: Plan;
  tested?: Tested | undefined;
  /** the work as it was last known: a plan made in haste has none */
  work?: PlanWork | undefined;
  done?: ReadonlyMap<string, string>;
}): readonly Waypoint[] => [
  boatWaypoint(boat),
  kitWaypoint(boat),
  needsWaypoint(plan),
  linesWaypoint(plan),
  powerWaypoint(boat, plan),
  fitWaypoint(plan),
  buyWaypoint(plan),
  workWaypoint(work, done),
  proveWaypoint(plan, tested),
  binderWaypoint(boat),
];
