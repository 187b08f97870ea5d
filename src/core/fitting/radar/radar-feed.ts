import { scannerFigures } from '../../facts/antenna-figures.ts';

/** What a feed loses out and back, volts: its copper taken hot, at the peak of what flows. */
export const radarFeedDropV = ({
  lengthM,
  ohmPerKm,
  currentA,
}: {
  readonly lengthM: number;
  readonly ohmPerKm: number;
  readonly currentA: number;
}): number => (2 * lengthM * ohmPerKm * scannerFigures.hotCopper.value * currentA) / 1000;
