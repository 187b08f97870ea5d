import { ampacityTables, bundleFactors, engineFactors } from '../facts/ampacity.data.ts';
import { bundleFactor, type ConductorSystem, engineFactor, tableAmpacityA } from '../facts/ampacity.ts';
import type { SourceKey } from '../facts/sources.ts';

/** How a conductor is laid, as far as its heat goes. */
export interface Laying {
  /** temperature rating of the insulation, one of the columns of the table: 60, 75, 80, 90, 105, 125, 200 AWG; 60, 70, 90, 105, 125, 200 metric */
  readonly insulationC: number;
  /** any part of it in an engine space, 50 °C */
  readonly engineSpace: boolean;
  /** conductors in its bundle that carry current together for long, itself counted; a DC pair is two */
  readonly carryingConductors: number;
}

/** What a conductor may carry for long, and what made it so. */
export interface Ampacity {
  readonly tableA: number;
  readonly engineFactor: number;
  readonly bundleFactor: number;
  /** exact; printed rounded down (`shownA`) */
  readonly allowedA: number;
  /** whole amperes to print, never more than `allowedA` */
  readonly shownA: number;
  /** where the table and the factors that changed anything come from; metric figures are from memory and say so */
  readonly sources: readonly SourceKey[];
}

/**
 * Continuous current of a conductor: table x factor of the engine space x factor of the bundle, each system with its own
 * table and factors. Undefined where the table has no such size or insulation, or where that insulation is not allowed in
 * an engine space.
 *
 * @example ampacity({ system: 'awg', size: '12', insulationC: 105, engineSpace: true, carryingConductors: 5 })?.allowedA // 22.95
 */
export const ampacity = ({
  system,
  size,
  insulationC,
  engineSpace,
  carryingConductors,
}: Laying & { readonly system: ConductorSystem; readonly size: string }): Ampacity | undefined => {
  const tableA = tableAmpacityA({ system, size, insulationC });
  const engine = engineSpace ? engineFactor({ system, insulationC }) : 1;
  if (tableA === undefined || engine === undefined) return undefined;
  const bundle = bundleFactor({ system, conductors: carryingConductors });
  const allowedA = tableA * engine * bundle;
  const engineSource = engineFactors[system].find((row) => row.insulationC === insulationC)?.source;
  return {
    tableA,
    engineFactor: engine,
    bundleFactor: bundle,
    allowedA,
    shownA: Math.floor(allowedA + 1e-9),
    sources: [
      ...new Set([
        ampacityTables[system].source,
        ...(engineSpace && engineSource !== undefined ? [engineSource] : []),
        ...(bundle < 1 ? [bundleFactors[system].source] : []),
      ]),
    ],
  };
};
