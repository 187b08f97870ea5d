/**
 * The factor to type into a log: f = f0 v / i, with f0 the factor that stood there while it was run, v the true speed and i what
 * it showed, both in one unit.
 *
 * @example logFactor({ factorBefore: 1.4, trueKn: 8, indicatedKn: 7.5 }) // 1.4933
 */
export const logFactor = ({
  factorBefore,
  trueKn,
  indicatedKn,
}: {
  readonly factorBefore: number;
  readonly trueKn: number;
  readonly indicatedKn: number;
}): number => (factorBefore * trueKn) / indicatedKn;
