/** Where the transducer sits, in the boat as she lies. */
export interface TransducerDepth {
  /** from the surface to the lowest point of the keel */
  readonly draftM: number;
  /** from the surface to the face of the transducer */
  readonly transducerBelowWaterM: number;
}

/** The two offsets that make a sounding one below the surface or one below the keel. */
export interface DepthOffsets {
  /** positive: from the transducer up to the surface */
  readonly surfaceM: number;
  /** negative: from the transducer down to the keel; never above 0 unless the transducer is the lowest point */
  readonly keelM: number;
}

/**
 * Offsets of a depth sounder with the sign the bus has them in (PGN 128267, DPT): what is shown is the depth below the
 * transducer with the offset added. To the surface +t, to the keel -(T - t); T the draft, t the transducer below the water.
 *
 * @example depthOffsets({ draftM: 1.95, transducerBelowWaterM: 0.6 }) // { surfaceM: 0.6, keelM: -1.35 }
 */
export const depthOffsets = ({ draftM, transducerBelowWaterM }: TransducerDepth): DepthOffsets => ({
  surfaceM: transducerBelowWaterM,
  keelM: transducerBelowWaterM - draftM,
});
