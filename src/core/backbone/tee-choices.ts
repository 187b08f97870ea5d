import { byCodeUnit } from '../boat/ids.ts';
import { checkLayout } from './check-layout.ts';
import { moveTee } from './move-tee.ts';
import type { Layout, Problem } from './problem.ts';
import { type GroundDevice, layGround } from './solver/ground.ts';

/** Where else on the trunk a tee could stand: the drop from there, what the layout would cost more, and the limits it would break. */
interface OtherTee {
  readonly place: string;
  /** the step of the walk at that place, counted from 0, that breaks least */
  readonly step: number;
  readonly dropM: number;
  /** thousandths of a hundredth, below 0 where it would be cheaper */
  readonly costMore: number;
  readonly breaks: readonly string[];
}

/** Why the tee of a device stands where it does: its drop, and the nearest other places of the trunk. */
export interface TeeChoice {
  readonly port: string;
  readonly place: string;
  readonly dropM: number;
  readonly others: readonly OtherTee[];
}

/** How many other places are looked at for each device. */
const othersEach = 3;

/** The other place, on the pass of the walk that breaks least. */
const otherTee = (
  { problem, layout, port }: { problem: Problem; layout: Layout; port: string },
  { place, mm, costMore }: { readonly place: string; readonly mm: number; readonly costMore: number },
): OtherTee => {
  const brokenAt = (step: number): readonly string[] =>
    checkLayout(problem, {
      ...layout,
      walk: moveTee(layout.walk, port, step),
      cost: layout.cost + costMore,
      bound: 0,
    }).broken;
  const [best] = [...layout.walk.keys()]
    .filter((step) => layout.walk[step]?.place === place)
    .map((step) => ({ step, breaks: brokenAt(step) }))
    .sort((one, other) => one.breaks.length - other.breaks.length);
  return { place, step: best?.step ?? 0, dropM: mm / 1000, costMore, breaks: best?.breaks ?? [] };
};

/**
 * For each device of a layout why its tee stands where it does, held against the other places of the trunk from which its
 * drop is shortest. Sorted by port; a device without a tee is left out.
 */
export const teeChoices = (problem: Problem, layout: Layout): TeeChoice[] => {
  const grade = problem.grades.find(({ id }) => id === layout.grade);
  if (grade === undefined) return [];
  const ground = layGround({ problem, grade, stretched: true });
  const onTrunk = new Set(layout.walk.map(({ place }) => place));
  const choiceOf = ({ id: port, options }: GroundDevice): TeeChoice[] => {
    const place = layout.walk.find(({ tees }) => tees.includes(port))?.place;
    if (place === undefined) return [];
    const near = options
      .map((option) => ({ place: problem.places[option.place]?.id ?? '', mm: option.mm }))
      .filter((option) => onTrunk.has(option.place))
      .sort((one, other) => one.mm - other.mm || byCodeUnit(one.place, other.place));
    const own = near.find((option) => option.place === place);
    const others = near.filter((option) => option.place !== place).slice(0, othersEach);
    return [
      {
        port,
        place,
        dropM: (own?.mm ?? 0) / 1000,
        others: others.map((option) =>
          otherTee({ problem, layout, port }, { ...option, costMore: (option.mm - (own?.mm ?? 0)) * grade.dropPerM }),
        ),
      },
    ];
  };
  return ground.devices.flatMap(choiceOf).sort((one, other) => byCodeUnit(one.port, other.port));
};
