import { isOpen } from '../../../core/accepted-findings.ts';
import type { Finding, Level, Plan } from '../../../core/plan-shape.ts';
import { gatherFindings } from '../../../papers/lists/gather-findings.ts';

/**
 * A finding as the margin shows it: `lights` are the ids it lights on the drawing, `balloon` the number it belongs to.
 * `more` are others of the same rule and level that stand in the same note.
 */
export interface Note {
  readonly finding: Finding;
  readonly more: readonly Finding[];
  readonly lights: readonly string[];
  readonly balloon?: number;
}

/** Gravest first; a record, so that a new level cannot be left out. */
const ranks: Readonly<Record<Level, number>> = { danger: 0, fault: 1, doubt: 2, advice: 3 };

/** The number of the balloon that stands for an id, so that margin and sheet agree. */
export const balloonNumbers = (
  balloons: readonly { readonly number: number; readonly about: readonly string[] }[],
): ReadonlyMap<string, number> =>
  new Map(balloons.flatMap(({ number, about }) => about.map((id): [string, number] => [id, number])));

/** The unit of `kit.port`; core's own splitDotted would bring the schema library into the page. */
const unitOf = (dotted: string): string => dotted.slice(0, dotted.indexOf('.'));

/** A whole backbone is lit only where the finding names nothing smaller; a port lights the unit it sits in as well. */
const lightsOf = (about: readonly string[], plan: Plan): readonly string[] => {
  const buses = new Set(plan.buses.map((bus) => bus.id));
  const smaller = about.filter((id) => !buses.has(id));
  const named = smaller.length > 0 ? smaller : about;
  return [...new Set(named.flatMap((id) => (id.includes('.') && !id.includes(':') ? [id, unitOf(id)] : [id])))];
};

/** The open findings of a plan as notes: dangers first, then faults, doubts and advice, each in the plan's own order, many of one kind in one note. */
export const notesOf = (plan: Plan, numbers: ReadonlyMap<string, number>): readonly Note[] =>
  gatherFindings(plan.findings.filter(isOpen).sort((a, b) => ranks[a.level] - ranks[b.level])).flatMap(
    ({ said, more }) => {
      const [finding, ...others] = said;
      if (finding === undefined) return [];
      const all = [...others, ...more];
      const lights = [...new Set([finding, ...all].flatMap(({ about }) => lightsOf(about, plan)))];
      const balloon = lights.map((id) => numbers.get(id)).find((number) => number !== undefined);
      return [{ finding, more: all, lights, ...(balloon === undefined ? {} : { balloon }) }];
    },
  );
