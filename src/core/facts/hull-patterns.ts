import { hullSections } from './hull-sections.ts';
import { type HullRole, hullShapes } from './hull-shapes.ts';

/** One step of an outline in metres: x forward of the transom, then z above the waterline or y to starboard. */
export type OutlineStep =
  | readonly ['M' | 'L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];

export interface HullPart {
  readonly role: HullRole;
  readonly steps: readonly OutlineStep[];
}

export interface HullPattern {
  /** from starboard, bow to the right: x and z */
  readonly side: readonly HullPart[];
  /** from above: x and y */
  readonly top: readonly HullPart[];
  /** from behind, port on the left: y and z */
  readonly astern: readonly HullPart[];
}

/** What of a hull the pattern needs, in metres. */
export interface HullSize {
  readonly kind: keyof typeof hullShapes;
  readonly lengthM: number;
  readonly beamM: number;
  readonly draftM: number;
  readonly airDraft: { readonly valueM: number };
  readonly outline?: {
    readonly side: readonly (readonly [number, number])[];
    readonly top: readonly (readonly [number, number])[];
  };
}

type Pair = readonly [across: number, up: number];
type PairOf = (across: string, up: string) => Pair;

const tokenPattern = /[MLCZ]|-?[0-9.]+a?/g;

/** Reads the small path language of the hull shapes; `pairOf` turns two of its numbers into metres. */
const readPath = (path: string, pairOf: PairOf): OutlineStep[] => {
  const tokens = path.match(tokenPattern) ?? [];
  const steps: OutlineStep[] = [];
  let letter = 'M';
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at] ?? '';
    if (token === 'Z') {
      steps.push(['Z']);
      at += 1;
      continue;
    }
    if (/[MLC]/.test(token)) {
      letter = token;
      at += 1;
    }
    const pair = (place: number): Pair => pairOf(tokens[at + place * 2] ?? '', tokens[at + place * 2 + 1] ?? '');
    if (letter === 'C') steps.push(['C', ...pair(0), ...pair(1), ...pair(2)]);
    else steps.push([letter === 'L' ? 'L' : 'M', ...pair(0)]);
    at += letter === 'C' ? 6 : 2;
  }
  return steps;
};

/** Lowers all that stands above the water where the boat's air draft is less than the pattern's. */
const heightFactor = (size: HullSize, houseTop: number): number =>
  Math.min(1, size.airDraft.valueM / (houseTop * size.lengthM));

/**
 * Height in metres of a share as the hull shapes give it: of the length above water, lowered where the boat passes under low
 * bridges, and of the draft below it. A point inside a shape in shares is so inside the hull drawn, whatever the measures.
 */
export const hullHeightM = (size: HullSize, share: number): number =>
  share < 0 ? share * size.draftM : share * size.lengthM * heightFactor(size, hullShapes[size.kind].houseTop);

const sidePair = (size: HullSize, factor: number): PairOf => {
  return (across, up) => {
    const xM = Number(across) * size.lengthM;
    if (up.endsWith('a')) return [xM, Number(up.slice(0, -1)) * size.airDraft.valueM];
    const share = Number(up);
    return [xM, share < 0 ? share * size.draftM : share * size.lengthM * factor];
  };
};

const topPair = (size: HullSize): PairOf => {
  return (across, up) => [Number(across) * size.lengthM, (Number(up) * size.beamM) / 2];
};

/** From astern the height comes first, so that a half drawn to port is mirrored like one seen from above. */
const asternPair = (size: HullSize, factor: number): PairOf => {
  const heightPair = sidePair(size, factor);
  return (up, across) => [heightPair('0', up)[1], (Number(across) * size.beamM) / 2];
};

/** Height and breadth exchanged: how a view from astern lies on the sheet. */
const turned = (step: OutlineStep): OutlineStep => {
  switch (step[0]) {
    case 'C':
      return ['C', step[2], step[1], step[4], step[3], step[6], step[5]];
    case 'Z':
      return step;
    default:
      return [step[0], step[2], step[1]];
  }
};

const flipped = (step: OutlineStep): OutlineStep => {
  switch (step[0]) {
    case 'C':
      return ['C', step[1], -step[2], step[3], -step[4], step[5], -step[6]];
    case 'Z':
      return step;
    default:
      return [step[0], step[1], -step[2]];
  }
};

const endOf = (step: OutlineStep | undefined): Pair => {
  if (step === undefined || step[0] === 'Z') return [0, 0];
  return step[0] === 'C' ? [step[5], step[6]] : [step[1], step[2]];
};

/** The port half closed over the centreline: the same steps walked back on the starboard side. */
const joined = (half: readonly OutlineStep[]): OutlineStep[] => {
  const back = half
    .map((step, index): OutlineStep | undefined => {
      const from = endOf(half[index - 1]);
      if (step[0] === 'C') return ['C', step[3], -step[4], step[1], -step[2], from[0], -from[1]];
      return step[0] === 'L' ? ['L', from[0], -from[1]] : undefined;
    })
    .filter((step) => step !== undefined)
    .reverse();
  return [...half, ...back, ['Z']];
};

const mirrored = (steps: readonly OutlineStep[], mirror: 'join' | 'copy' | undefined): OutlineStep[] => {
  if (mirror === 'join') return joined(steps);
  return mirror === 'copy' ? [...steps, ...steps.map(flipped)] : [...steps];
};

const ownOutline = (points: readonly (readonly [number, number])[]): HullPart => ({
  role: 'hull',
  steps: [...points.map(([across, up], index): OutlineStep => [index === 0 ? 'M' : 'L', across, up]), ['Z']],
});

/**
 * The outlines of a boat in metres, from the pattern of its kind stretched to its own length, beam, draft and air draft;
 * an outline in the boat file takes the place of the pattern in the two views it gives. A likeness to plan on, not a lines plan.
 * Source: drawn-hull-shapes (project choice).
 */
export const hullPattern = (size: HullSize): HullPattern => {
  const shape = hullShapes[size.kind];
  const factor = heightFactor(size, shape.houseTop);
  const behind = asternPair(size, factor);
  const astern = hullSections[size.kind].map((line) => ({
    role: line.role,
    steps: mirrored(readPath(line.path, behind), line.mirror).map(turned),
  }));
  if (size.outline !== undefined) {
    return { side: [ownOutline(size.outline.side)], top: [ownOutline(size.outline.top)], astern };
  }
  const side = sidePair(size, factor);
  return {
    side: shape.side.map((line) => ({ role: line.role, steps: readPath(line.path, side) })),
    top: shape.top.map((line) => ({
      role: line.role,
      steps: mirrored(readPath(line.path, topPair(size)), line.mirror),
    })),
    astern,
  };
};
