import { pathShape } from '../../drawing/marks.ts';
import { direction, type Point, stepFrom } from '../../drawing/point.ts';
import { polygon, polyline } from '../../drawing/polyline.ts';
import type { Shape } from '../../drawing/shapes.ts';

/** What the symbols of the boat sheets stand for, in the key of every sheet that has them. */
export const symbolWords = {
  hidden: 'tee or end behind a panel or out of reach',
  parted: 'cables come apart here',
  passage: 'passage through deck or bulkhead',
  antenna: 'antenna',
  sensor: 'sensor',
} as const;

export type SheetSymbol = keyof typeof symbolWords;

interface Look {
  readonly about?: readonly string[];
  /** how far it reaches from its middle: less in the key */
  readonly radiusMm?: number;
}

const group = (symbol: SheetSymbol, shapes: readonly Shape[], about: readonly string[]): Shape => ({
  kind: 'group',
  label: symbolWords[symbol],
  about,
  shapes,
});

/** A broken ring around a joint that nobody sees. */
export const hiddenRing = ([xMm, yMm]: Point, { about = [], radiusMm = 2.9 }: Look = {}): Shape =>
  group(
    'hidden',
    [{ kind: 'circle', xMm, yMm, radiusMm, stroke: { ink: 'ink', widthMm: 0.25, dashMm: [1.1, 0.7] } }],
    about,
  );

/** A diamond around the place where cables are made to come apart. */
export const partedDiamond = ([xMm, yMm]: Point, { about = [], radiusMm: armMm = 3.6 }: Look = {}): Shape => {
  const corners: Point[] = [
    [xMm, yMm - armMm],
    [xMm + armMm, yMm],
    [xMm, yMm + armMm],
    [xMm - armMm, yMm],
  ];
  return group('parted', [pathShape(polygon(corners), { stroke: { ink: 'ink', widthMm: 0.3 } })], about);
};

/** Two short bars across a way where it goes through a deck or a bulkhead. */
export const passageBars = (from: Point, to: Point, { about = [], radiusMm: armMm = 2.4 }: Look = {}): Shape => {
  const heading = direction(from, to);
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const bars = [-0.6, 0.6].flatMap((alongMm) =>
    polyline([
      stepFrom(middle, heading, { alongMm, acrossMm: -armMm }),
      stepFrom(middle, heading, { alongMm, acrossMm: armMm }),
    ]),
  );
  return group('passage', [pathShape(bars, { stroke: { ink: 'ink', widthMm: 0.35 } })], about);
};
