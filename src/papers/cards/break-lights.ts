import type { ReadingEntry } from '../../core/plan-shape.ts';
import { breakId } from '../lanes/break-marks.ts';

const unitOf = (port: string): string => port.slice(0, port.indexOf('.'));

/** Where a way breaks, both sides of the break light up with the screen, and on the diagram the cross between them. */
export const breakLights = ({ at, whyNot }: ReadingEntry): string[] => [
  ...new Set([
    at,
    ...[whyNot?.link.from, whyNot?.link.to].flatMap((port) => (port === undefined ? [] : unitOf(port))),
    ...(whyNot === undefined ? [] : [breakId(whyNot.link, at)]),
  ]),
];
