import type { Problem, ProblemDevice, ProblemGrade, ProblemPlace, ProblemWay } from './problem.ts';

/** A place with tees where the trunk may end, unless told otherwise. */
export const aPlace = (id: string, own: Partial<ProblemPlace> = {}): ProblemPlace => ({
  id,
  tees: true,
  end: true,
  spares: 0,
  ...own,
});

/** An open way for trunk (twice) and drops, its longest length equal to its nominal one, unless told otherwise. */
export const aWay = ({
  id,
  a,
  b,
  mm,
  ...own
}: Pick<ProblemWay, 'id' | 'a' | 'b' | 'mm'> & Partial<ProblemWay>): ProblemWay => ({
  id,
  a,
  b,
  mm,
  maxMm: mm,
  trunk: 2,
  drop: true,
  extra: 0,
  ...own,
});

/** A device of LEN 1 that works down to 9 V, with a tail of 300 mm, unless told otherwise. */
export const aDevice = (id: string, place: string, own: Partial<ProblemDevice> = {}): ProblemDevice => {
  const tailMm = own.tailMm ?? 300;
  return { id, place, tailMm, maxTailMm: tailMm, len: 1, minMv: 9000, ...own };
};

/** Light cable: 100 m, 57 milliohm a metre, 3 A, unless told otherwise. */
export const aGrade = (own: Partial<ProblemGrade> = {}): ProblemGrade => ({
  id: 'light',
  warnMm: 100_000,
  failMm: 100_000,
  microOhmPerM: 57_000,
  maxMa: 3000,
  trunkPerM: 400,
  dropPerM: 500,
  ...own,
});

/** A problem with the usual limits, one grade, no ready-made pieces, and a feed lead of 1 m to every place with tees. */
export const aProblem = (
  parts: Pick<Problem, 'places' | 'ways' | 'devices'> & Partial<Omit<Problem, 'hash' | 'format'>>,
): Problem => ({
  format: 1,
  hash: 'hash of this problem',
  bus: 'nav',
  grades: [aGrade()],
  limits: { dropMm: 6000, dropsMm: 78_000, devices: 50 },
  pieces: [],
  prices: { tee: 2000, terminator: 1500, feed: 3000 },
  feed: {
    mv: 11_500,
    leadPerM: 200,
    leadMicroOhmPerM: 14_200,
    reach: parts.places.filter(({ tees }) => tees).map(({ id }) => ({ place: id, mm: 1000, maxMm: 1000 })),
  },
  ...parts,
});
