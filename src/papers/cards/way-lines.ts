import type { BusEntry, JoinEntry, LineEntry, Plan } from '../../core/plan-shape.ts';
import { teePieceId } from '../sheet/trunk-pieces.ts';
import type { CardBoat } from './card-boat.ts';

/** One stretch of a reading's way, from the port of one unit to the port of another; both `kit.port`. */
export interface Stretch {
  readonly from: string;
  readonly to: string;
}

const unitOf = (dotted: string): string => dotted.slice(0, dotted.indexOf('.'));

/** The plug a port sits on, `kit.plug`. */
const plugOf = (index: CardBoat, dotted: string): string | undefined => {
  const unit = unitOf(dotted);
  const port = dotted.slice(unit.length + 1);
  const plug = index.sheetOf.get(unit)?.ports.find(({ id }) => id === port)?.onPlug;
  return plug === undefined ? undefined : `${unit}.${plug}`;
};

const isMember = (join: JoinEntry, dotted: string): boolean =>
  join.members.some(({ kit, port }) => `${kit}.${port}` === dotted);

/** The join two ports share; two joins of one bus count as one. */
export const joinBetween = (plan: Plan, { from, to }: Stretch): JoinEntry | undefined => {
  const direct = plan.joins.find((join) => isMember(join, from) && isMember(join, to));
  if (direct !== undefined) return direct;
  const buses = new Set(plan.joins.filter((join) => isMember(join, to)).flatMap(({ bus }) => bus ?? []));
  return plan.joins.find((join) => join.bus !== undefined && buses.has(join.bus) && isMember(join, from));
};

/** By tee or end of the trunk, the step of the walk it stands at. */
const stepsOf = (bus: BusEntry): ReadonlyMap<string, number> =>
  new Map(
    bus.walk.flatMap(({ place, tees }, step) => [
      [`${bus.id}/end@${place}`, step] as const,
      ...tees.map((tee) => [`${bus.id}/${tee}`, step] as const),
    ]),
  );

/** The trunk lines that lie between two tees, whichever comes first along the walk. */
const trunkBetween = (plan: Plan, bus: BusEntry, { from, to }: Stretch): LineEntry[] => {
  const steps = stepsOf(bus);
  const [one, other] = [steps.get(`${bus.id}/${from}`), steps.get(`${bus.id}/${to}`)];
  if (one === undefined || other === undefined) return [];
  const [first, last] = [Math.min(one, other), Math.max(one, other)];
  return plan.lines.filter((line) => {
    if (line.kind !== 'trunk') return false;
    const ends = [steps.get(line.from), steps.get(line.to)];
    return ends.every((step) => step !== undefined && step >= first && step <= last);
  });
};

const dropsOf = (index: CardBoat, plan: Plan, bus: string, { from, to }: Stretch): LineEntry[] => {
  const plugs = [plugOf(index, from), plugOf(index, to)];
  return plan.lines.filter(
    (line) =>
      line.kind === 'drop' &&
      [line.from, line.to].includes(bus) &&
      (plugs.includes(line.from) || plugs.includes(line.to)),
  );
};

/**
 * The lines a reading runs on between two ports: on a bus both drops and the trunk between their tees, else the cable of
 * the join that ends at the plug where it is heard. Empty where there is no cable, as for Wi-Fi.
 */
export const wayLines = (index: CardBoat, plan: Plan, stretch: Stretch): LineEntry[] => {
  const join = joinBetween(plan, stretch);
  if (join === undefined) return [];
  const bus = plan.buses.find(({ id }) => id === join.bus);
  if (bus !== undefined) {
    return [...dropsOf(index, plan, bus.id, stretch), ...trunkBetween(plan, bus, stretch)];
  }
  const plugs = [plugOf(index, stretch.from), plugOf(index, stretch.to)];
  return plan.lines.filter(
    (line) => join.lines.includes(line.id) && plugs.includes(line.from) && plugs.includes(line.to),
  );
};

/** The pieces of trunk between tees at one place that a stretch runs through, by id. */
export const teesPassed = (plan: Plan, { from, to }: Stretch): string[] => {
  const bus = plan.buses.find(({ id }) => id === joinBetween(plan, { from, to })?.bus);
  if (bus === undefined) return [];
  const tees = bus.walk.flatMap((step, at) => step.tees.map((tee) => ({ tee, at })));
  const [one, other] = [from, to].map((port) => tees.findIndex(({ tee }) => tee === port));
  if (one === undefined || other === undefined || one < 0 || other < 0) return [];
  const passed = tees.slice(Math.min(one, other), Math.max(one, other) + 1);
  return passed.slice(1).flatMap(({ tee, at }, before) => {
    const last = passed[before];
    return last?.at === at ? [teePieceId(bus.id, [last.tee, tee])] : [];
  });
};
