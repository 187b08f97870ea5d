/** What a safe depth is made of, metres. */
export interface DepthMargins {
  readonly draftM: number;
  readonly wavesM: number;
  readonly doubtM: number;
}

/**
 * The least depth of water she may be in, from the surface: s = T + waves and squat + doubt.
 *
 * @example safeDepthM({ draftM: 1.95, wavesM: 0.3, doubtM: 0.5 }) // 2.75
 */
export const safeDepthM = ({ draftM, wavesM, doubtM }: DepthMargins): number => draftM + wavesM + doubtM;
