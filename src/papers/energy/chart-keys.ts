import type { Boat } from '../../core/boat/boat-schema.ts';
import { byCodeUnit } from '../../core/boat/ids.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { FillPattern } from '../drawing/fill-pattern.ts';
import type { Ink } from '../drawing/shapes.ts';

/** One unit that has a number and a pattern of its own on the chart. */
export interface ChartKey {
  readonly kit: string;
  readonly name: string;
  readonly number: number;
  readonly look: { readonly pattern: FillPattern; readonly ink: Ink };
  readonly internet: boolean;
}

const looks: readonly ChartKey['look'][] = [
  { pattern: 'solid', ink: 'ink' },
  { pattern: 'rising', ink: 'data' },
  { pattern: 'upright', ink: 'power' },
  { pattern: 'falling', ink: 'ethernet' },
  { pattern: 'crossed', ink: 'ink' },
  { pattern: 'level', ink: 'data' },
];

/** The look of everything that has no number of its own. */
export const otherLook: ChartKey['look'] = { pattern: 'empty', ink: 'ink' };

/**
 * The units that get a number: those with the largest share of any day, before or after. A satellite terminal is always
 * among them.
 */
export const chartKeys = (boat: Boat, { energy }: Pick<Plan, 'energy'>): ChartKey[] => {
  const shares = new Map<string, { share: number; internet: boolean }>();
  // alongside hardly anything runs, so that a trifle has a great share
  const told = energy.filter(({ when }) => when !== 'alongside');
  for (const { byKit, whPerDayBefore, whPerDayAfter } of told) {
    const largest = Math.max(whPerDayBefore, whPerDayAfter);
    for (const { kit, before, after, internet } of byKit) {
      const share = Math.max(before?.wh ?? 0, after?.wh ?? 0) / largest;
      const known = shares.get(kit);
      shares.set(kit, { share: share + (known?.share ?? 0), internet: internet === true || known?.internet === true });
    }
  }
  return [...shares]
    .sort(
      ([one, a], [other, b]) => Number(b.internet) - Number(a.internet) || b.share - a.share || byCodeUnit(one, other),
    )
    .slice(0, looks.length)
    .map(([kit, { internet }], at) => ({
      kit,
      name: boat.kit.find(({ id }) => id === kit)?.name ?? kit,
      number: at + 1,
      look: looks[at] ?? otherLook,
      internet,
    }));
};
