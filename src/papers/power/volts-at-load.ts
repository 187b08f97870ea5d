import type { Plan } from '../../core/plan-shape.ts';
import type { LoadEntry } from '../../core/power-shape.ts';

/**
 * The volts at the plug of a load with everything drawing and the bank at its lowest: at its own port, or at the port of
 * the unit that draws for it. Undefined where nothing feeds it or its source cannot carry everything.
 */
export const voltsAtLoad = (
  { supplies }: Pick<Plan, 'supplies'>,
  { port, source }: Pick<LoadEntry, 'port' | 'source'>,
): number | undefined => {
  const own = source.by === 'unit' ? source.port : port;
  return supplies.flatMap(({ at }) => at).find(({ node }) => node === own)?.volts;
};

/** What stands at each unit of a boat drawing, by kit id: "11.24 V", or that it is too few for it. */
export const unitVolts = (plan: Pick<Plan, 'supplies' | 'loads'>): ReadonlyMap<string, string> => {
  const worst = new Map<string, { readonly volts: number; readonly isShort: boolean }>();
  for (const load of plan.loads) {
    const volts = voltsAtLoad(plan, load);
    if (volts === undefined) continue;
    const unit = load.port.split('.')[0] ?? load.port;
    const isShort = volts < load.minV;
    const known = worst.get(unit);
    // of two plugs the one that is short, else the one with fewer volts
    if (known === undefined || (isShort && !known.isShort) || (isShort === known.isShort && volts < known.volts)) {
      worst.set(unit, { volts, isShort });
    }
  }
  return new Map(
    [...worst].map(([unit, { volts, isShort }]) => [unit, `${volts.toFixed(2)} V${isShort ? ', too few' : ''}`]),
  );
};
