import type { Layout, Problem } from '../backbone/problem.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { freeId } from '../boat/every-id.ts';
import type { EditCall } from '../boat/history.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import { lastPhase } from '../boat/phase.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import { readingName } from '../facts/reading-words.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { type PriceList, unitPrice } from '../shopping/price-list.ts';
import type { BusChange } from './bus-changes.ts';

/** How many ways of parting a bus are tried, the most even first. */
const mostSplits = 5;

/** What a bridge is sold as. */
const bridgeSheet = typicalSheets.find(({ id }) => id === 'bus-bridge-two-way');

type Device = Problem['devices'][number];

/** The units of a bus as they come along its nearest trunk, each with its ports on the bus; a unit is never parted. */
const alongTrunk = (index: BoatIndex, devices: readonly Device[], { walk }: Layout): (readonly Device[])[] => {
  const stepOf = new Map(walk.flatMap(({ tees }, step) => tees.map((tee): [string, number] => [tee, step])));
  const byUnit = new Map<string, Device[]>();
  for (const device of devices) {
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

/** The place on the near side of a cut that lies nearest to the other side. */
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
  return [...new Set(side.map(({ place }) => place))].sort(
    (one, two) => gap(one) - gap(two) || byCodeUnit(one, two),
  )[0];
};

/** The needs met at units of one side by what units of the other say: what has to cross the bridge. */
const crossing = (index: BoatIndex, to: readonly Device[]): ReadingId[] => {
  const units = new Set(to.map(({ id }) => splitDotted(id).kit));
  const carried = new Set(bridgeSheet?.turns?.flatMap(({ carries }) => carries.map(({ reading }) => reading)));
  const wanted = index.boat.needs.filter(({ at, reading }) => units.has(at) && carried.has(reading));
  return [...new Set(wanted.map(({ reading }) => reading))].sort(byCodeUnit);
};

/** Which side of the other some units lie on, by where most of them are. */
const sideOf = (index: BoatIndex, own: readonly Device[], other: readonly Device[]): string => {
  const middle = (devices: readonly Device[]): number =>
    devices.reduce((sum, { place }) => sum + (index.places.get(place)?.xM ?? 0), 0) / devices.length;
  return middle(own) >= middle(other) ? 'forward' : 'aft';
};

interface SplitTask {
  readonly index: BoatIndex;
  readonly prices: PriceList;
  readonly problem: Problem;
  /** the layout that breaks the limits least */
  readonly layout: Layout;
}

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
  const name = index.buses.get(problem.bus)?.name ?? problem.bus;
  const edits: EditCall[] = [
    { edit: 'add-bus', params: { id: bus, name: `${name}, ${where}`, protocol: 'nmea2000' } },
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
  const across = crossing(index, moves).map((reading) => readingName({ reading, instance: undefined }));
  const crosses = across.length === 0 ? 'Nothing needs to cross it.' : `Over it go ${across.join(', ')}.`;
  return [
    {
      says: `Part the bus in two: ${moves.length} units ${where} (${lenOf(moves)} LEN) on a second bus with a feed of its own, ${stays.length} (${lenOf(stays)} LEN) on the first, and a bridge at ${index.places.get(place)?.name ?? place}. ${crosses}`,
      edits,
      buses: [problem.bus, bus],
      partsCost: unitPrice(prices, bridgeSheet) ?? 0,
    },
  ];
};

/**
 * Proposals to part a bus in two with a two-way bridge: cut along its nearest
 * trunk where both sides come out most alike in load, the units of either side moved. Proposals are searched by rule of
 * thumb, never called cheapest.
 */
export const splitChanges = (task: SplitTask): BusChange[] => {
  const units = alongTrunk(task.index, task.problem.devices, task.layout);
  const all = lenOf(task.problem.devices);
  const cuts = units
    .map((_, at) => at)
    .slice(2, -1)
    .sort((one, other) => {
      const uneven = (at: number): number => Math.abs(2 * lenOf(units.slice(0, at).flat()) - all);
      return uneven(one) - uneven(other) || one - other;
    })
    .slice(0, mostSplits);
  return cuts.flatMap((at) => {
    const [one, other] = [units.slice(0, at).flat(), units.slice(at).flat()];
    return [
      ...splitAt(task, { stays: other, moves: one, where: sideOf(task.index, one, other) }),
      ...splitAt(task, { stays: one, moves: other, where: sideOf(task.index, other, one) }),
    ];
  });
};
