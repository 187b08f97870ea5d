import { type Ampacity, ampacity, type Laying } from './ampacity.ts';
import { ohmPerKmAt, workingC } from './conductor-ohm.ts';
import { type Conductor, conductorsOf } from './conductors-of.ts';
import { dropByOhmV } from './drop-by-ohm.ts';
import { dropByRuleV } from './drop-rules.ts';
import { type CircuitUse, type LeastSize, leastSize } from './least-size.ts';
import { type DropAsk, sizeByDrop } from './size-by-drop.ts';
import { within } from './within.ts';

/** Everything a conductor must do and how it is laid; `loopM` is out and back, `currentA` that at the lowest supply. */
export interface ConductorAsk extends DropAsk, Laying {
  /** the fuse before it, which it must carry too */
  readonly fuseA?: number;
  readonly sheathed: boolean;
  readonly outOfSheathMm?: number;
  /** 'other' where not given: then no exemption from the least size holds */
  readonly use?: CircuitUse;
}

/** What made a conductor as thick as it is: the volts it may lose, the current it must stand, or the least size allowed. */
export type DecidedBy = 'drop' | 'ampacity' | 'least-size';

/** A conductor picked, with what each of the three asked for alone. */
export interface ConductorPick {
  readonly fits: true;
  readonly conductor: Conductor;
  readonly byDrop: string;
  readonly byAmpacity: string;
  readonly leastSize: LeastSize;
  readonly decidedBy: DecidedBy;
  readonly ampacity: Ampacity;
  /** volts lost by the published rule of the system, `abyc` for a gauge and `iso` for a metric size */
  readonly ruleDropV: number;
  /** volts lost in the cable itself at the temperature it works at; a metric size is picked by these */
  readonly realDropV: number;
}

/** No size does it: the drop, the current, or an insulation that is not allowed there or not in the table. */
export interface NoConductor {
  readonly fits: false;
  readonly why: 'drop' | 'ampacity' | 'insulation';
}

/**
 * The thinnest conductor that keeps all three: loses no more than `dropV`, carries the current and the fuse for long, and
 * is no thinner than the rules allow. `decidedBy` says which of them asked for this size; where two ask for the same one,
 * the heat is named before the volts and these before the least size.
 *
 * @example pickConductor({ system: 'awg', currentA: 100, loopM: 3.048, dropV: 1.2, insulationC: 105,
 *   engineSpace: false, carryingConductors: 2, sheathed: false }) // conductor.size '6', byDrop '10', decidedBy 'ampacity'
 */
export const pickConductor = (ask: ConductorAsk): ConductorPick | NoConductor => {
  const sizes = conductorsOf(ask.system, ask.areas);
  const byDrop = sizeByDrop(ask);
  const byAmpacity = sizeByAmpacity(ask);
  if (byAmpacity === undefined) return { fits: false, why: sizes.some(carries(ask, 0)) ? 'ampacity' : 'insulation' };
  if (byDrop === undefined) return { fits: false, why: 'drop' };
  const least = leastSize({ use: 'other', ...ask, lengthMm: (ask.loopM * 1000) / 2 });
  const wanted: readonly { by: DecidedBy; at: number }[] = [
    { by: 'ampacity', at: sizes.indexOf(byAmpacity) },
    { by: 'drop', at: sizes.indexOf(byDrop) },
    { by: 'least-size', at: least.binds ? sizes.findIndex(({ size }) => size === least.size) : 0 },
  ];
  const thickest = wanted.reduce((most, one) => (one.at > most.at ? one : most));
  const conductor = sizes[thickest.at] ?? byAmpacity;
  const may = ampacity({ ...ask, size: conductor.size });
  if (may === undefined) throw new Error(`The table of currents has no ${conductor.size} (${ask.system}).`);
  return {
    fits: true,
    conductor,
    byDrop: byDrop.size,
    byAmpacity: byAmpacity.size,
    leastSize: least,
    decidedBy: thickest.by,
    ampacity: may,
    ...lostIn(ask, conductor),
  };
};

/** The thinnest size that carries the current, and the fuse where that is more. */
const sizeByAmpacity = (ask: ConductorAsk): Conductor | undefined =>
  conductorsOf(ask.system, ask.areas).find(carries(ask, Math.max(ask.currentA, ask.fuseA ?? 0)));

const carries =
  (ask: ConductorAsk, loadA: number) =>
  ({ size }: Conductor): boolean => {
    const may = ampacity({ ...ask, size });
    return may !== undefined && within({ value: loadA, limit: may.allowedA });
  };

const lostIn = (
  { system, currentA, loopM, engineSpace }: ConductorAsk,
  { areaMm2, ohmPerKm20 }: Conductor,
): Pick<ConductorPick, 'ruleDropV' | 'realDropV'> => ({
  ruleDropV: dropByRuleV({ rule: system === 'awg' ? 'abyc' : 'iso', currentA, loopM, areaMm2 }),
  realDropV: dropByOhmV({ currentA, loopM, ohmPerKm: ohmPerKmAt({ ohmPerKm20, tempC: workingC(engineSpace) }) }),
});
