import { inchM } from '../units/foot.ts';

/** Sizes of displays by class, least and most, for planning: never for ordering or cutting. */
export const displayEnvelopes = {
  source: 'practice-display-envelope',
  rows: [
    {
      inches: 5,
      bezelWidthMm: [160, 180],
      bezelHeightMm: [95, 115],
      cutoutWidthMm: [140, 160],
      cutoutHeightMm: [80, 95],
      depthMm: [45, 60],
      plugsMm: [50, 70],
      kg: 0.5,
      mostW: [8, 12],
    },
    {
      inches: 7,
      bezelWidthMm: [205, 235],
      bezelHeightMm: [125, 160],
      cutoutWidthMm: [185, 205],
      cutoutHeightMm: [105, 135],
      depthMm: [55, 80],
      plugsMm: [50, 80],
      kg: 0.9,
      mostW: [12, 20],
    },
    {
      inches: 9,
      bezelWidthMm: [245, 290],
      bezelHeightMm: [150, 180],
      cutoutWidthMm: [220, 265],
      cutoutHeightMm: [130, 160],
      depthMm: [60, 90],
      plugsMm: [60, 90],
      kg: 1.5,
      mostW: [18, 30],
    },
    {
      inches: 12,
      bezelWidthMm: [310, 360],
      bezelHeightMm: [200, 240],
      cutoutWidthMm: [285, 335],
      cutoutHeightMm: [180, 215],
      depthMm: [65, 100],
      plugsMm: [60, 100],
      kg: 2.8,
      mostW: [30, 50],
    },
    {
      inches: 16,
      bezelWidthMm: [385, 435],
      bezelHeightMm: [245, 285],
      cutoutWidthMm: [360, 410],
      cutoutHeightMm: [225, 260],
      depthMm: [70, 105],
      plugsMm: [60, 100],
      kg: 4.5,
      mostW: [45, 75],
    },
  ],
} as const;

const wide = { across: 16, high: 9 } as const;

/**
 * Width and height of a glass of 16 to 9 by its diagonal in inches.
 *
 * @example glassMm(9) // 199.24 x 112.07
 */
export const glassMm = (inches: number): { readonly widthMm: number; readonly heightMm: number } => {
  const each = (inches * inchM * 1000) / Math.hypot(wide.across, wide.high);
  return { widthMm: each * wide.across, heightMm: each * wide.high };
};
