import type { Boat } from '../../core/boat/boat-schema.ts';
import { plateMaterialFigures } from '../../core/facts/opening-figures.ts';
import type { FitEntry, PlateEntry } from '../../core/fits-shape.ts';
import { shapeAt } from '../../core/fitting/openings/shape-at.ts';
import type { Plan as WholePlan } from '../../core/plan-shape.ts';
import { briefBoat } from '../binder/brief-boat.ts';
import { notForCuttingWords, plateMaterial } from './fit-words.ts';
import { mmText, sizeText } from './size-words.ts';
import type { Outline, Template } from './template.ts';

/** What of a plan templates are made of. */
type Plan = Pick<WholePlan, 'fits' | 'plates'>;

type Named = readonly { readonly id: string; readonly name: string }[];

const nameIn = (list: Named, id: string): string => list.find((one) => one.id === id)?.name ?? id;

const corners = (cornerMm: number | undefined): string =>
  cornerMm === undefined ? '' : `, corners ${mmText(cornerMm)} mm`;

const fitAt = (plan: Plan, opening: string): FitEntry | undefined => plan.fits.find((fit) => fit.opening === opening);

/** What lies under a plate, marked so that it can be laid over the hole. */
const underPlate = (boat: Boat, plan: Plan, { openings }: PlateEntry): Outline[] =>
  openings.flatMap(({ opening, xMm, yMm, unit }) => {
    const fit = fitAt(plan, opening);
    if (fit === undefined) return [];
    const hole = { shape: shapeAt(fit.hole, [xMm, yMm]), says: nameIn(boat.openings ?? [], opening) };
    return unit === undefined || fit.bezel === undefined
      ? [hole]
      : [hole, { shape: shapeAt(fit.bezel, [xMm, yMm]), says: `bezel of ${nameIn(boat.kit, unit)}` }];
  });

const sentence = (text: string): string => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;

/** Where a unit in a plate does not pass the old hole, the panel is cut too. */
const widened = (boat: Boat, { widens }: PlateEntry): string[] =>
  widens.length === 0
    ? []
    : [
        `Under it the panel is cut away as far as the cut-out reaches: ${widens.map((id) => nameIn(boat.openings ?? [], id)).join(', ')}.`,
      ];

const plateTemplate = (boat: Boat, plan: Plan, plate: PlateEntry): Template => {
  const holes = plate.openings.map(({ opening }) => nameIn(boat.openings ?? [], opening));
  const { says } = plateMaterialFigures.materials[plate.material];
  return {
    id: plate.id,
    title: `${plate.cuts.length === 0 ? 'Blind plate' : 'Adapter plate'}: ${holes.join(', ')}`,
    about: [...plate.openings.map(({ opening }) => opening), ...plate.cuts.map(({ unit }) => unit)],
    cut: [
      { shape: plate.outline, says: `plate ${sizeText(plate.outline)}${corners(plate.outline.cornerMm)}` },
      ...plate.cuts.map(({ unit, cut }) => ({
        shape: cut,
        says: `cut-out ${sizeText(cut)}${corners(cut.cornerMm)}: ${nameIn(boat.kit, unit)}`,
      })),
    ],
    mark: underPlate(boat, plan, plate),
    drill: plate.screws.map(({ xMm, yMm, holeMm }) => ({ xMm, yMm, holeMm })),
    says: [
      sentence(
        `${plateMaterial(plate)}; ${says}. Laps over the hole by ${mmText(plate.overlapMm)} mm; bed it on butyl or a gasket.`,
      ),
      ...widened(boat, plate),
    ],
    notForCutting: notForCuttingWords(plate.notForCutting),
  };
};

const cutTemplate = (boat: Boat, fit: FitEntry): Template[] => {
  const { cut, bezel, unit, hole } = fit;
  if (fit.verdict !== 'enlarge' || cut === undefined || bezel === undefined || unit === undefined) return [];
  const name = nameIn(boat.kit, unit);
  return [
    {
      id: fit.opening,
      title: `Cut-out: ${name}, over ${nameIn(boat.openings ?? [], fit.opening)}`,
      about: [fit.opening, unit],
      cut: [{ shape: cut, says: `cut-out ${sizeText(cut)}${corners(cut.cornerMm)}: ${name}` }],
      mark: [
        { shape: hole, says: `old hole ${sizeText(hole)}` },
        { shape: bezel, says: `bezel ${sizeText(bezel)}` },
      ],
      drill: (fit.screws ?? []).map(({ xMm, yMm, holeMm }) => ({ xMm, yMm, holeMm })),
      says: [
        'Lay it so that the old hole on it lies over the old hole in the panel.',
        fit.screws === undefined
          ? 'The sheet does not say where its screws are: mark them through the unit itself.'
          : 'Drill pilot holes first.',
      ],
      notForCutting: notForCuttingWords(fit.notForCutting),
    },
  ];
};

/** Every template of a boat: one a plate, then one a hole that is enlarged, each by id. */
export const templatesOf = (whole: Boat, plan: Plan): Template[] => {
  const boat = briefBoat(whole);
  return [
    ...plan.plates.map((plate) => plateTemplate(boat, plan, plate)),
    ...plan.fits.flatMap((fit) => cutTemplate(boat, fit)),
  ];
};
