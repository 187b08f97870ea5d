import { codeOf, type LineCode } from '../sheet/line-code.ts';
import type { LaneKind } from './lane-edges.ts';

/** What speaks without a cable: dots far apart, and a letter that no cable has. */
export const radioCode: LineCode = { words: 'by radio', ink: 'data', widthMm: 0.45, dashMm: [0.45, 1.3], letter: 'R' };

/** How a connection of the diagram is drawn. */
export const laneCode = (kind: LaneKind): LineCode => (kind === 'radio' ? radioCode : codeOf(kind));
