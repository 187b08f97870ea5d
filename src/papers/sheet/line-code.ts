import type { LineKind } from '../../core/boat/boat-schema.ts';
import type { Ink } from '../drawing/shapes.ts';

/** How a kind of line is drawn, so that it can be told from the others on a black and white copy. */
export interface LineCode {
  readonly words: string;
  readonly ink: Ink;
  readonly widthMm: number;
  readonly dashMm?: readonly number[];
  /** two thin strokes this far apart */
  readonly doubleMm?: number;
  /** stands in a gap of the stroke */
  readonly letter?: string;
  /** an arrow head shows which way it talks */
  readonly arrows?: boolean;
}

const thin = 0.35;
const dots = [0.45, 0.85];
const dashDot = [2.2, 0.8, 0.45, 0.8];

/** The code of each kind of line. */
export const lineCode = {
  trunk: { words: 'trunk', ink: 'data', widthMm: 0.95 },
  drop: { words: 'drop', ink: 'data', widthMm: 0.32 },
  ethernet: { words: 'Ethernet', ink: 'ethernet', widthMm: 0.42, dashMm: [3.2, 1.3] },
  pair: { words: '0183 pair', ink: 'data', widthMm: thin, letter: 'P', arrows: true },
  'single-wire': { words: 'single wire', ink: 'data', widthMm: thin, letter: 'W', arrows: true },
  analog: { words: 'analog lead', ink: 'data', widthMm: thin, dashMm: dashDot },
  'engine-can': { words: 'engine bus', ink: 'data', widthMm: thin, letter: 'E' },
  modbus: { words: 'Modbus pair', ink: 'data', widthMm: thin, letter: 'M' },
  coax: { words: 'coax', ink: 'ink', widthMm: 0.2, doubleMm: 0.75 },
  video: { words: 'video', ink: 'ink', widthMm: thin, letter: 'V' },
  audio: { words: 'audio', ink: 'ink', widthMm: thin, letter: 'A' },
  usb: { words: 'USB', ink: 'ink', widthMm: thin, letter: 'U' },
  feed: { words: 'DC feed', ink: 'power', widthMm: 0.45, dashMm: dots },
  feeder: { words: 'DC feeder', ink: 'power', widthMm: 0.9, dashMm: [0.9, 0.9] },
} as const satisfies Record<LineKind, LineCode>;

/** The code of one kind. */
export const codeOf = (kind: LineKind): LineCode => lineCode[kind];

/** Every kind in the order of the key. */
export const codedKinds = Object.keys(lineCode) as LineKind[]; // the table above holds each kind and nothing else

/** An old cable that leaves: hollow and faint. */
export const leavingCode: LineCode = {
  words: 'leaves',
  ink: 'quiet',
  widthMm: 0.14,
  doubleMm: 1.1,
  dashMm: [1.4, 0.9],
};
