import { type DepthOffsets, depthOffsets } from '../depth/depth-offsets.ts';

/** A sounding with a lead line beside the transducer, and what the sounder showed at that moment. */
export interface LeadLine {
  /** from the surface to the ground */
  readonly leadM: number;
  readonly shownM: number;
  /** the offset that stood in the sensor then, with its sign */
  readonly offsetM: number;
  readonly draftM: number;
}

/** Where the transducer lies by the lead line, and the offsets that follow. */
export interface LeadLineResult extends DepthOffsets {
  readonly belowWaterM: number;
}

/**
 * Depth of the transducer below the water by a lead line: t = lead - (shown - offset). The offsets follow from it and the draft.
 *
 * @example leadLine({ leadM: 4.6, shownM: 4, offsetM: 0, draftM: 1.95 }) // 0.6 below the water, keel -1.35
 */
export const leadLine = ({ leadM, shownM, offsetM, draftM }: LeadLine): LeadLineResult => {
  const belowWaterM = leadM - (shownM - offsetM);
  return { belowWaterM, ...depthOffsets({ draftM, transducerBelowWaterM: belowWaterM }) };
};
