import { shapeBounds } from '../../core/fitting/openings/shape-bounds.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import type { Outline, Template } from './template.ts';

export const templateLabelStyle = { sizeMm: 3, face: 'words' } as const;

/** Words on a template, from their left end on their base line, in its millimetres. */
interface TemplateLabel {
  readonly xMm: number;
  readonly yMm: number;
  readonly says: string;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly below: number;
  readonly above: number;
}

/** Room of a word over and under its base line. */
const overMm = 2.6;
const underMm = 0.9;

/** From the lower left corner of an outline: inside for what is cut; just outside, else inside, for what is only marked. */
const rights = [6, 12, 20, 32, 48] as const;
const upsOf = { cut: [3, 8, 13, 18, 23], mark: [-4, 3, 8, 13, 18, 23] } as const;

const meets = (one: Box, other: Box): boolean =>
  one.left < other.right && other.left < one.right && one.below < other.above && other.below < one.above;

/** The four sides of an outline, each as thin as a line. */
const sidesOf = ({ shape }: Outline): Box[] => {
  const box = shapeBounds(shape);
  return [
    { ...box, above: box.below },
    { ...box, below: box.above },
    { ...box, right: box.left },
    { ...box, left: box.right },
  ];
};

const boxOf = ({ xMm, yMm, says }: TemplateLabel): Box => ({
  left: xMm,
  right: xMm + textWidthMm(says, templateLabelStyle),
  below: yMm - underMm,
  above: yMm + overMm,
});

/** Where words may stand at an outline, the best first; there a seam between two sheets seldom cuts them. */
const spotsOf = ({ shape, says }: Outline, ups: readonly number[]): TemplateLabel[] => {
  const { left, right, below } = shapeBounds(shape);
  const widthMm = textWidthMm(says, templateLabelStyle);
  return ups.flatMap((up) =>
    rights.filter((at) => left + at + widthMm < right - 2).map((at) => ({ xMm: left + at, yMm: below + up, says })),
  );
};

/** What each outline of a template is, set where no line, no hole and no other word is in the way; none where there is no room. */
export const templateLabels = ({ cut, mark, drill }: Template): TemplateLabel[] => {
  const taken: Box[] = [
    ...[...cut, ...mark].flatMap(sidesOf),
    ...drill.map(({ xMm, yMm, holeMm }) => {
      const reach = holeMm / 2 + 2;
      return { left: xMm - reach, right: xMm + reach, below: yMm - reach, above: yMm + reach };
    }),
  ];
  const put = (outline: Outline, ups: readonly number[]): TemplateLabel[] => {
    const free = spotsOf(outline, ups).find((spot) => !taken.some((one) => meets(boxOf(spot), one)));
    if (free === undefined) return [];
    taken.push(boxOf(free));
    return [free];
  };
  return [...cut.flatMap((one) => put(one, upsOf.cut)), ...mark.flatMap((one) => put(one, upsOf.mark))];
};
