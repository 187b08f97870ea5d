import { fuseAgainstConductor } from '../facts/fuses.ts';
import { within } from './within.ts';

/** A fuse held against the thinnest conductor behind it; `pct` of what that may carry for long. */
export interface FuseVerdict {
  readonly verdict: 'ok' | 'warn' | 'refuse';
  readonly pct: number;
}

/**
 * Whether a fuse protects its conductor: right up to 100 % of what the conductor may carry, a warning up to 150 % below
 * 50 V, refused above.
 *
 * @example fuseVerdict({ fuseA: 30, conductorA: 25, nominalV: 12 }) // warn, 120 %
 */
export const fuseVerdict = ({
  fuseA,
  conductorA,
  nominalV,
}: {
  readonly fuseA: number;
  readonly conductorA: number;
  readonly nominalV: number;
}): FuseVerdict => {
  const pct = conductorA > 0 ? (100 * fuseA) / conductorA : Number.POSITIVE_INFINITY;
  const { warnAbove, refuseAbove, strictFrom } = fuseAgainstConductor;
  if (within({ value: pct, limit: warnAbove.value })) return { verdict: 'ok', pct };
  const mayWarn = nominalV < strictFrom.value && within({ value: pct, limit: refuseAbove.value });
  return { verdict: mayWarn ? 'warn' : 'refuse', pct };
};
