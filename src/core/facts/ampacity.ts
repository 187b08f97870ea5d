import { ampacityTables, bundleFactors, engineFactors } from './ampacity.data.ts';

/** Gauges and metric sizes have tables and factors of their own, which are not mixed. */
export type ConductorSystem = keyof typeof ampacityTables;

/**
 * Continuous current of a conductor in free air at 30 °C outside an engine space, A; undefined where the table has no such
 * size or insulation. `size` is the gauge ('2/0') or the area in mm² ('2.5').
 */
export const tableAmpacityA = ({
  system,
  size,
  insulationC,
}: {
  readonly system: ConductorSystem;
  readonly size: string;
  readonly insulationC: number;
}): number | undefined => {
  const table = ampacityTables[system];
  const columns: readonly number[] = table.insulationC;
  const rows = new Map<string, readonly number[]>(Object.entries(table.amps));
  return rows.get(size)?.[columns.indexOf(insulationC)];
};

/** Share of the table current left in an engine space; undefined where that insulation is not allowed there. */
export const engineFactor = ({
  system,
  insulationC,
}: {
  readonly system: ConductorSystem;
  readonly insulationC: number;
}): number | undefined => engineFactors[system].find((row) => row.insulationC === insulationC)?.factor;

/** Share of the table current left in a bundle of so many conductors that carry current together. */
export const bundleFactor = ({
  system,
  conductors,
}: {
  readonly system: ConductorSystem;
  readonly conductors: number;
}): number => bundleFactors[system].rows.findLast((row) => row.fromConductors <= conductors)?.factor ?? 1;
