import type { Problem } from '../backbone/problem.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { freeId } from '../boat/every-id.ts';
import type { EditCall } from '../boat/history.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import { lastPhase } from '../boat/phase.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { unitPrice } from '../prices/price-list.ts';
import type { BusChange, BusChangeTask, BusHop } from './bus-changes.ts';

/** How many cuts are tried: the most even ones, then those that the fewest readings have to cross. */
const cutsTried = { even: 3, quiet: 2 } as const;

/** What a bridge is sold as. */
const bridgeSheet = typicalSheets.find(({ id }) => id === 'bus-bridge-two-way');

type Device = Problem['devices'][number];
type SplitTask = Omit<BusChangeTask, 'clashes' | 'busesOf'>;

/** The units of a bus as they come along its nearest trunk, each with its ports on the bus; a unit is never parted. */
const alongTrunk = ({ index, problem, layout }: SplitTask): (readonly Device[])[] => {
  const walk = layout?.walk ?? [];
  const stepOf = new Map(walk.flatMap(({ tees }, step) => tees.map((tee): [string, number] => [tee, step])));
  const byUnit = new Map<string, Device[]>();
  for (const device of problem.devices) {
    const { kit } = splitDotted(device.id);
    byUnit.set(kit, [...(byUnit.get(kit) ?? []), device]);
  }
  const atOf = ([device]: readonly Device[]): number => stepOf.get(device?.id ?? '') ?? walk.length;
  const xOf = ([device]: readonly Device[]): number => index.places.get(device?.place ?? '')?.xM ?? 0;
  return [...byUnit]
    .sort(([one, own], [other, theirs]) => atOf(own) - atOf(theirs) || xOf(theirs) - xOf(own) || byCodeUnit(one, other))
    .map(([, own]) => own);
};

const lenOf = (devices: readonly Device[]): number => devices.reduce((sum, { len }) => sum + len, 0);

/** The place on one side of a cut that lies nearest to the other side. */
const bridgePlace = (index: BoatIndex, side: readonly Device[], other: readonly Device[]): string | undefined => {
  const at = (place: string) => index.places.get(place);
  const gap = (place: string): number => {
    const here = at(place);
    return Math.min(
      ...other.map((device) => {
        const there = at(device.place);
        return here === undefined || there === undefined
          ? Number.POSITIVE_INFINITY
          : Math.hypot(here.xM - there.xM, here.yM - there.yM, here.zM - there.zM);
      }),
    );
  };
  const dryFirst = (place: string): number => Number(!['dry', 'damp'].includes(at(place)?.exposure ?? ''));
  return [...new Set(side.map(({ place }) => place))].sort(
    (one, two) => dryFirst(one) - dryFirst(two) || gap(one) - gap(two) || byCodeUnit(one, two),
  )[0];
};

/** Which side of the other some units lie on, by where most of them are. */
const sideOf = (index: BoatIndex, own: readonly Device[], other: readonly Device[]): string => {
  const middle = (devices: readonly Device[]): number =>
    devices.reduce((sum, { place }) => sum + (index.places.get(place)?.xM ?? 0), 0) / devices.length;
  return middle(own) >= middle(other) ? 'forward' : 'aft';
};

/** How many readings go from one side of a cut to the other. */
const crossings = (hops: readonly BusHop[], side: readonly Device[]): number => {
  const here = new Set(side.map(({ id }) => id));
  return new Set(hops.filter(({ from, to }) => here.has(from) !== here.has(to)).map(({ reading }) => reading)).size;
};

const splitAt = (
  { index, prices, problem }: SplitTask,
  {
    stays,
    moves,
    where,
  }: { readonly stays: readonly Device[]; readonly moves: readonly Device[]; readonly where: string },
): BusChange[] => {
  const place = bridgePlace(index, stays, moves);
  if (place === undefined || bridgeSheet === undefined) return [];
  const phase = lastPhase(index.boat);
  const bus = freeId(index.boat, `${problem.bus}-2`);
  const kit = freeId(index.boat, 'new-bridge');
  const own = index.buses.get(problem.bus);
  const name = own?.name ?? problem.bus;
  const grade = own?.grade === undefined ? {} : { grade: own.grade };
  const edits: EditCall[] = [
    { edit: 'add-bus', params: { id: bus, name: `${name}, ${where}`, protocol: 'nmea2000', ...grade } },
    ...moves.map(({ id: port }): EditCall => ({ edit: 'change-bus', params: { port, bus } })),
    {
      edit: 'add-unit',
      params: {
        id: kit,
        name: 'new bridge',
        sheet: bridgeSheet.id,
        fate: 'comes',
        place,
        ...(phase > 1 ? { phase } : {}),
      },
    },
    { edit: 'join-bus', params: { port: `${kit}.side-a`, bus: problem.bus } },
    { edit: 'join-bus', params: { port: `${kit}.side-b`, bus } },
  ];
  return [
    {
      kind: 'split',
      says: `Part the bus in two: ${moves.length} units ${where} (${lenOf(moves)} LEN) on a second bus with a feed of its own, ${stays.length} (${lenOf(stays)} LEN) on the first, and a bridge at ${index.places.get(place)?.name ?? place}.`,
      edits,
      buses: [problem.bus, bus],
      partsCost: unitPrice(prices, bridgeSheet) ?? 0,
      bridge: kit,
    },
  ];
};

/**
 * Proposals to part a bus in two with a two-way bridge: cut along its nearest trunk where both sides come out most alike in
 * load, or where the fewest readings have to cross, the units of either side moved. Proposals are searched by rule of
 * thumb, never called cheapest.
 */
export const splitChanges = (task: SplitTask): BusChange[] => {
  const units = alongTrunk(task);
  const all = lenOf(task.problem.devices);
  const cuts = units.map((_, at) => at).slice(1);
  const uneven = (at: number): number => Math.abs(2 * lenOf(units.slice(0, at).flat()) - all);
  const even = [...cuts].sort((one, other) => uneven(one) - uneven(other) || one - other);
  const crossing = (at: number): number => crossings(task.hops, units.slice(0, at).flat());
  const quiet = even
    .slice(0, Math.ceil(cuts.length / 2))
    .map((at) => ({ at, crossed: crossing(at) }))
    .sort((one, other) => one.crossed - other.crossed || uneven(one.at) - uneven(other.at) || one.at - other.at)
    .map(({ at }) => at);
  return [...new Set([...even.slice(0, cutsTried.even), ...quiet.slice(0, cutsTried.quiet)])].flatMap((at) => {
    const [one, other] = [units.slice(0, at).flat(), units.slice(at).flat()];
    return [
      ...splitAt(task, { stays: other, moves: one, where: sideOf(task.index, one, other) }),
      ...splitAt(task, { stays: one, moves: other, where: sideOf(task.index, other, one) }),
    ]
      .sort((first, second) => first.edits.length - second.edits.length)
      .map((change) => ({ ...change, insteadOf: `cut ${at}` }));
  });
};
