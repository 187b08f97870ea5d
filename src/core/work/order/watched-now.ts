import { byCodeUnit } from '../../boat/ids.ts';
import type { Watched } from '../../work-shape.ts';
import type { WatchedFunction } from './problem.ts';

type Way = Watched['ways'][number];

/**
 * The functions whose darkness hangs on the order of the jobs that are still to do. A way that a job done has ended is gone; what
 * a job done gave is there; a way that only a job left out would give never comes. A function that she has not had, or that no
 * order can give back in the end, is left out, unless it may never be dark: no order changes it.
 */
export const watchedNow = ({
  functions,
  open,
  done,
}: {
  readonly functions: readonly Watched[];
  readonly open: ReadonlySet<string>;
  readonly done: ReadonlyMap<string, string>;
}): WatchedFunction[] => {
  const list = (ids: readonly string[]): string[] => [...new Set(ids)].filter((id) => open.has(id)).sort(byCodeUnit);
  const waysOf = (ways: readonly Way[]): WatchedFunction['ways'] =>
    ways
      .filter(({ until }) => !until.some((job) => done.has(job)))
      .filter(({ from }) => from.every((job) => done.has(job) || open.has(job)))
      .map(({ from, until }) => ({ from: list(from), until: list(until) }))
      .sort((a, b) => byCodeUnit(JSON.stringify(a), JSON.stringify(b)));
  const isHad = ({ ways }: Watched): boolean =>
    ways.some(({ from, until }) => from.length === 0 || until.some((job) => done.has(job)));
  return functions
    .filter((one) => isHad(one))
    .map((one) => ({ id: one.function, hard: one.hard, ways: waysOf(one.ways) }))
    .filter(({ ways }) => !ways.some(({ from, until }) => from.length === 0 && until.length === 0))
    .filter(({ hard, ways }) => hard || ways.some(({ until }) => until.length === 0))
    .sort((a, b) => byCodeUnit(a.id, b.id));
};
