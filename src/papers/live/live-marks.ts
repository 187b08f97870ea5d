import type { Boat } from '../../core/boat/boat-schema.ts';
import { ageWords } from '../../core/proof/live/age-words.ts';
import type { LiveReading, LiveSnapshot, LiveUnit } from '../../core/proof/live/live-snapshot.ts';
import { type Box, overlaps } from '../drawing/box.ts';
import { distanceMm, type Point } from '../drawing/point.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import type { ScaledView } from '../sheet/view.ts';

/** One unit on one view of the boat, as it is heard now. */
export interface LiveMark {
  readonly unit: string;
  readonly at: Point;
  readonly state: LiveUnit['state'];
  /** 2 = just now, 1 = a moment ago, 0 = longer ago or never */
  readonly fresh: 0 | 1 | 2;
}

/** What a unit says, beside it. */
export interface LiveLabel {
  readonly unit: string;
  readonly text: string;
  /** where its text begins, on its base line */
  readonly at: Point;
  /** what it covers */
  readonly box: Box;
}

export interface LiveMarks {
  readonly view: ScaledView['name'];
  readonly marks: readonly LiveMark[];
  readonly labels: readonly LiveLabel[];
}

/** Radius of a mark, and the size of what stands beside it. */
export const markMm = 1.3;
export const labelMm = 2.6;
const besideMm = 3.2;
const lineMm = 3.1;
const justNowMs = 1500;
const momentMs = 4000;
/** From here on an age is told beside the value. */
const oldMs = 3000;
const triedLines = [0, 1, -1, 2, -2, 3, -3] as const;

const freshOf = (ageMs: number | undefined): LiveMark['fresh'] => {
  if (ageMs === undefined) return 0;
  return ageMs < justNowMs ? 2 : ageMs < momentMs ? 1 : 0;
};

/** The first reading of a unit that can be said in a few letters, with its age once it is no longer fresh. */
const toldBy = (readings: readonly LiveReading[], unit: string): string | undefined => {
  const told = readings.find(
    (one) => one.unit === unit && one.short !== undefined && one.empty !== true && one.silent !== true,
  );
  if (told === undefined) return undefined;
  return told.ageMs < oldMs ? told.short : `${told.short} (${ageWords(told.ageMs)})`;
};

const around = ([xMm, yMm]: Point): Box => ({
  leftMm: xMm - markMm,
  rightMm: xMm + markMm,
  topMm: yMm - markMm,
  bottomMm: yMm + markMm,
});

/** The first free line beside a mark, to its right, then to its left; undefined where all are taken. */
const freeLine = (mark: Point, text: string, { taken, view }: { taken: readonly Box[]; view: ScaledView }) => {
  const widthMm = textWidthMm(text, { sizeMm: labelMm, face: 'figures' });
  for (const leftMm of [mark[0] + markMm + 0.8, mark[0] - markMm - 0.8 - widthMm]) {
    for (const line of triedLines) {
      const baseMm = mark[1] + labelMm / 3 + line * lineMm;
      const box = { leftMm, rightMm: leftMm + widthMm, topMm: baseMm - labelMm, bottomMm: baseMm + 0.4 };
      const isInside = leftMm >= view.box.leftMm && box.rightMm <= view.box.rightMm;
      if (isInside && !taken.some((other) => overlaps(box, other))) return { at: [leftMm, baseMm] as const, box };
    }
  }
  return undefined;
};

const labelsOn = (view: ScaledView, marks: readonly LiveMark[], snapshot: LiveSnapshot): LiveLabel[] => {
  const taken: Box[] = marks.map(({ at }) => around(at));
  return marks.flatMap(({ unit, at }): LiveLabel[] => {
    const text = toldBy(snapshot.readings, unit);
    const free = text === undefined ? undefined : freeLine(at, text, { taken, view });
    if (text === undefined || free === undefined) return [];
    taken.push(free.box);
    return [{ unit, text, ...free }];
  });
};

/**
 * The units of a live bus on the views of the boat: each at its place, several at one spot beside each other. What they
 * say stands beside them in the view from above, as far as there is room; the list has it all.
 */
export const liveMarks = ({
  boat,
  views,
  snapshot,
}: {
  boat: Boat;
  views: readonly ScaledView[];
  snapshot: LiveSnapshot;
}): LiveMarks[] => {
  const places = new Map(boat.places.map((place) => [place.id, place]));
  const placeOf = new Map(boat.kit.map(({ id, place }) => [id, place]));
  return views.map((view) => {
    const marks: LiveMark[] = [];
    for (const { unit, state, ageMs } of snapshot.units) {
      const place = places.get(placeOf.get(unit) ?? '');
      if (place === undefined) continue;
      let at = view.at(place);
      while (marks.some((other) => distanceMm(other.at, at) < besideMm * 0.9)) at = [at[0] + besideMm, at[1]];
      marks.push({ unit, at, state, fresh: freshOf(ageMs) });
    }
    return { view: view.name, marks, labels: view.name === 'top' ? labelsOn(view, marks, snapshot) : [] };
  });
};
