/**
 * What the lean of a hull under a transducer asks for: nothing up to the limit, above it a fairing block or a tilted element.
 *
 * @example tiltVerdict({ tiltDeg: 11, mostDeg: 10 }) // 'fairing block or tilted element'
 */
export const tiltVerdict = ({
  tiltDeg,
  mostDeg,
}: {
  readonly tiltDeg: number;
  readonly mostDeg: number;
}): 'ok' | 'fairing block or tilted element' => (tiltDeg <= mostDeg ? 'ok' : 'fairing block or tilted element');
