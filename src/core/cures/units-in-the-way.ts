import { busFigures } from '../backbone/bus-figures.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import type { LayoutLimit } from '../facts/layout-limits.ts';
import type { BusChangeTask } from './bus-changes.ts';

/** Kinds that stand where they must: what sees the sky, feels the wind, reaches the water or is part of something large. */
const fixedKinds = /antenna|sensor|transducer|radar|camera|engine|gearbox|drive|tank|compass/;

/** How much a unit is in the way of each limit, from the layout that comes nearest; the greater the more. */
const weights = ({ problem, layout }: BusChangeTask): Partial<Record<LayoutLimit, ReadonlyMap<string, number>>> => {
  if (layout === undefined) return {};
  const { walk } = layout;
  const { drops, along = [] } = busFigures(problem, layout).entry;
  const feed = walk.findIndex(({ tees }) => tees.includes('feed'));
  const atM = new Map(
    walk.flatMap(({ tees }, step) => tees.map((tee): [string, number] => [tee, along[step]?.alongM ?? 0])),
  );
  const feedM = along[feed]?.alongM ?? 0;
  const middleM = (along.at(-1)?.alongM ?? 0) / 2;
  const drop = new Map(drops.map(({ port, boughtM }) => [port, boughtM]));
  const away = new Map([...atM].map(([port, m]) => [port, Math.abs(m - middleM) + (drop.get(port) ?? 0)]));
  const moment = new Map(
    problem.devices.map(({ id, len }) => [id, len * (Math.abs((atM.get(id) ?? 0) - feedM) + (drop.get(id) ?? 0))]),
  );
  return { 'one-drop': drop, 'all-drops': drop, 'tee-places': drop, length: away, volts: moment, current: moment };
};

/**
 * The units that are most in the way of a layout and could stand elsewhere: those at which a limit is missed by the most
 * first, then by what each limit of the clashes hangs on, drops, distance from the middle or moment about the feed.
 */
export const unitsInTheWay = (task: BusChangeTask): string[] => {
  const { index, problem, clashes } = task;
  const limits = clashes.flat();
  const ports = problem.devices.map(({ id }) => id);
  const named = limits.flatMap(({ at = [] }) => at.filter((id) => ports.includes(id)));
  const by = weights(task);
  const ranked = limits.flatMap(({ limit }) => {
    const weight = by[limit];
    if (weight === undefined) return [];
    const of = (port: string): number => weight.get(port) ?? 0;
    return [[...ports].sort((one, other) => of(other) - of(one) || byCodeUnit(one, other))];
  });
  // Turn by turn, so that each limit has its say.
  const turns = ports.flatMap((_, turn) => ranked.flatMap((list) => list[turn] ?? []));
  const units = [...named, ...turns, ...ports].map((port) => splitDotted(port).kit);
  return [...new Set(units)].filter((kit) => !fixedKinds.test(index.sheetOf.get(kit)?.kind ?? ''));
};
