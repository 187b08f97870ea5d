import type { Boat, Cable, Kit } from '../boat/boat-schema.ts';
import { isAboard } from '../boat/phase.ts';

type LayoutPin = NonNullable<NonNullable<Boat['pins']>['layouts']>[string];

/** A unit as it is in a boat that has one phase: what goes later stays as yet, what came is part of her order. */
const unitNow = ({ phase: _, ...unit }: Kit): Kit => (unit.fate === 'goes' ? { ...unit, fate: 'stays' } : unit);

const unitAt = (end: Cable['from']): string | undefined => end.at?.split('.')[0];

/** The tees of a settled trunk: one whose unit is not aboard stands there free, and is counted among the spares of its place. */
const pinNow = (pin: LayoutPin, aboard: ReadonlySet<string>): LayoutPin => {
  const counts = new Map<string, number>();
  const teeNow = (place: string, tee: string): string => {
    const isFree = tee.startsWith('spare@') || (tee !== 'feed' && !aboard.has(tee.split('.')[0] ?? tee));
    if (!isFree) return tee;
    const count = (counts.get(place) ?? 0) + 1;
    counts.set(place, count);
    return `spare@${place}#${count}`;
  };
  const walk = pin.walk.map((step) => ({ ...step, tees: step.tees.map((tee) => teeNow(step.place, tee)) }));
  return { ...pin, walk };
};

const pinsNow = (boat: Boat, aboard: ReadonlySet<string>): Pick<Boat, 'pins'> => {
  if (boat.pins?.layouts === undefined) return boat.pins === undefined ? {} : { pins: boat.pins };
  const layouts = Object.entries(boat.pins.layouts).map(([bus, pin]) => [bus, pinNow(pin, aboard)]);
  return { pins: { ...boat.pins, layouts: Object.fromEntries(layouts) } };
};

/**
 * The boat as she stands in one phase, as a boat of one phase: the kit aboard then, joins, feeds and needs of that kit. What
 * goes later stays, with its cables; what came by then is all part of her order. A settled trunk has its later tees free.
 *
 * @example boatInPhase(boat, 1) // planned like any boat
 */
export const boatInPhase = (boat: Boat, phase: number): Boat => {
  const { orders: _, ...own } = boat;
  const kit = boat.kit.filter((unit) => isAboard(unit, phase));
  const aboard = new Set(kit.map(({ id }) => id));
  const stillHere = new Set(kit.filter(({ fate }) => fate === 'goes').map(({ id }) => id));
  const isFed = (target: string): boolean => !target.includes('.') || aboard.has(target.split('.')[0] ?? target);
  const cableNow = (cable: Cable): Cable => {
    const ends = [unitAt(cable.from), unitAt(cable.to)];
    return cable.fate === 'goes' && ends.some((unit) => unit !== undefined && stillHere.has(unit))
      ? { ...cable, fate: 'stays' }
      : cable;
  };
  return {
    ...own,
    kit: kit.map(unitNow),
    cables: boat.cables.map(cableNow),
    joins: boat.joins.map((join) => ({ ...join, members: join.members.filter((member) => aboard.has(member.kit)) })),
    needs: boat.needs.filter(({ at }) => aboard.has(at)),
    supply: {
      ...boat.supply,
      panels: boat.supply.panels.map((panel) => ({
        ...panel,
        circuits: panel.circuits.map((circuit) => ({ ...circuit, feeds: circuit.feeds.filter(isFed) })),
      })),
    },
    ...pinsNow(boat, aboard),
  };
};
