import { byCodeUnit } from '../boat/ids.ts';
import type { LayoutStep } from './problem.ts';

/** A walk with the tee of a device, `kit.port`, taken to another step of it; steps are counted from 0. */
export const moveTee = (walk: readonly LayoutStep[], port: string, step: number): (LayoutStep & { tees: string[] })[] =>
  walk.map((own, at) => {
    const tees = own.tees.filter((tee) => tee !== port);
    return { ...own, tees: at === step ? [...tees, port].sort(byCodeUnit) : tees };
  });
