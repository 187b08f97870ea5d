import type { Figure } from './figure.ts';

/** How cables are labelled: how large the type is, where a label sits, how long one is that wraps round its cable. */
export const labelFigures = {
  /** height of the letters of the id, from which it is read at `readAt` */
  typeLeast: { value: 3, unit: 'mm', source: 'practice-labels' },
  typeMost: { value: 4, unit: 'mm', source: 'practice-labels' },
  readAt: { value: 300, unit: 'mm', source: 'practice-labels' },
  /** from the end of the cable to the label */
  fromEndLeast: { value: 30, unit: 'mm', source: 'practice-labels' },
  fromEndMost: { value: 50, unit: 'mm', source: 'practice-labels' },
  /** what a label that wraps itself is longer than once round */
  wrapOverlap: { value: 6, unit: 'mm', source: 'practice-labels' },
  /** height of the letters of all that stands under the id */
  smallType: { value: 2, unit: 'mm', source: 'choice-labels' },
  /** side of one square of a code, so that the camera of a phone reads it off a curved cable */
  codeSquareLeast: { value: 0.33, unit: 'mm', source: 'choice-labels' },
  codeSquareMost: { value: 0.5, unit: 'mm', source: 'choice-labels' },
  /** squares left white round a code */
  codeQuiet: { value: 4, unit: 'squares', source: 'iso-18004' },
} as const satisfies Record<string, Figure>;

/**
 * Length of a label that wraps itself: once round the cable and the overlap, pi x outside diameter + 6 mm (practice-labels).
 *
 * @example wrapLengthMm({ outsideMm: 6 }) // 24.85
 */
export const wrapLengthMm = ({ outsideMm }: { outsideMm: number }): number =>
  Math.PI * outsideMm + labelFigures.wrapOverlap.value;
