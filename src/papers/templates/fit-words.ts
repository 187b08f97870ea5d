import { plateMaterialFigures } from '../../core/facts/opening-figures.ts';
import type { FitEntry, PlateEntry } from '../../core/fits-shape.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { bothText, mmText, sizeText } from './size-words.ts';

/** What a plate is made of, and how thick. */
export const plateMaterial = ({ material, thicknessMm }: PlateEntry): string =>
  `${plateMaterialFigures.materials[material].name} ${bothText(thicknessMm)}`;

/** "plate 212 × 178 mm (8.35 × 7.01 in), GRP 5 mm (0.20 in)". */
export const plateWords = (plate: PlateEntry): string => `plate ${sizeText(plate.outline)}, ${plateMaterial(plate)}`;

/** What is to be done at an opening. */
export const verdictWords = ({ verdict, plate: id }: FitEntry, { plates }: Pick<Plan, 'plates'>): string => {
  const plate = plates.find((one) => one.id === id);
  const made = plate === undefined ? 'plate' : plateWords(plate);
  switch (verdict) {
    case 'as-it-is':
      return 'fits as it is, new gasket';
    case 'enlarge':
      return 'enlarge the hole';
    case 'plate':
      return `adapter ${made}${plate !== undefined && plate.openings.length > 1 ? `, one over ${plate.openings.length} openings` : ''}`;
    case 'elsewhere':
      return 'another place, or a bracket';
    case 'close':
      return plate === undefined ? 'close it: plug or laminate, by the yard' : `close with a blind ${made}`;
    case 'same-hole':
      return 'same hole: old housing out, hull dry ashore';
    case 'not-known':
      return 'not known: the sheet gives no sizes';
  }
};

const caseWords = (fit: FitEntry): string[] => {
  switch (fit.case) {
    case 'inside-cutout':
      return ['the old hole lies inside the new cut-out'];
    case 'under-bezel':
      return ['the bezel hides the old hole'];
    case 'shows':
      return [
        `${bothText(fit.uncovered?.widestMm ?? 0)} of the old hole ${fit.verdict === 'plate' ? 'would show' : 'shows'} beside bezel and gasket`,
      ];
    case 'no-room':
      return ['there is no room for it there'];
    default:
      return [];
  }
};

const setOffWords = ({ setOffMm: [x, y] = [0, 0] }: FitEntry): string[] => {
  const across = x === 0 ? [] : [`${mmText(Math.abs(x))} mm to the ${x < 0 ? 'left' : 'right'}`];
  const up = y === 0 ? [] : [`${mmText(Math.abs(y))} mm ${y < 0 ? 'down' : 'up'}`];
  const moved = [...across, ...up];
  return moved.length === 0 ? [] : [`set ${moved.join(' and ')} from the middle of the old hole`];
};

const roomWords = ({ behind }: FitEntry): string[] => {
  if (behind?.freeMm === undefined) return [];
  const spare = behind.freeMm - behind.needMm;
  return [
    `behind it ${mmText(behind.needMm)} mm of ${mmText(behind.freeMm)} mm, ${spare < 0 ? `${mmText(-spare)} mm short` : `${mmText(spare)} mm to spare`}`,
  ];
};

const screwWords = ({ screws, oldScrews }: FitEntry): string[] => {
  const lacking = (screws ?? []).filter(({ edgeMm, needMm }) => edgeMm < needMm).length;
  return [
    ...(lacking === 0 ? [] : [`${lacking} of its screws too near to a hole`]),
    ...(oldScrews === undefined || oldScrews.count === 0
      ? []
      : [`${oldScrews.count} old screw holes to fill, ${oldScrews.bare} of them in sight`]),
  ];
};

/** Why, in millimetres. */
export const reasonWords = (fit: FitEntry): string =>
  [
    ...(fit.reason === undefined ? [] : [`decided: ${fit.reason}`]),
    ...caseWords(fit),
    ...setOffWords(fit),
    ...roomWords(fit),
    ...screwWords(fit),
  ].join('; ');

const cutWords = {
  'typical-sizes': 'the sizes of the unit are those usual for its kind, not read in its manual nor measured on it',
  'guessed-hole': 'the old hole was guessed, not measured',
} as const;

/** Why nothing may be cut by it, a sentence part each. */
export const notForCuttingWords = (reasons: FitEntry['notForCutting']): string[] =>
  (reasons ?? []).map((reason) => cutWords[reason]);
