/** What a run may lose: a new one aims at the one and keeps below the other, a kept one keeps below the third. */
export interface CoaxLimits {
  readonly newAimDb: number;
  readonly newMostDb: number;
  readonly keptMostDb: number;
}

export type CoaxVerdict = 'ok' | 'advice' | 'doubt' | 'fault';

/**
 * What a loss means. A kept run is never a fault by calculation, for most masts that stand are so; only a measurement makes
 * it one.
 */
export const coaxVerdict = (
  { use, totalDb }: { readonly use: 'new' | 'kept'; readonly totalDb: number },
  limits: CoaxLimits,
): CoaxVerdict => {
  if (use === 'kept') return totalDb > limits.keptMostDb ? 'doubt' : 'ok';
  if (totalDb > limits.newMostDb) return 'fault';
  return totalDb > limits.newAimDb ? 'advice' : 'ok';
};
