import type { BoatIndex } from '../../boat/boat-index.ts';
import { cableGrades } from '../../facts/cable-grades.ts';
import type { LineEntry, PlanDraft } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';

const gradeOf = (plan: PlanDraft, line: LineEntry): keyof typeof cableGrades | undefined =>
  plan.buses.find(({ id }) => [line.from, line.to].some((end) => end === id || end.startsWith(`${id}/`)))?.grade;

const words = (index: BoatIndex, ends: readonly string[]): string =>
  ends.map((id) => index.places.get(id)?.name ?? id).join(' to ');

/** A moulded plug is twice as thick as its cable; through a narrow gland the cable goes alone and gets its plug behind it. */
export const plugTooBigForTheWay: Rule = {
  id: 'plugs/plug-too-big-for-the-way',
  level: 'doubt',
  title: 'A moulded plug does not pass a way its cable is to go through.',
  sources: ['practice-plug-holes'],
  check: ({ index, plan }) =>
    index.boat.ways.flatMap((way) => {
      const { bore } = way;
      if (bore === undefined) return [];
      const tight = plan.lines.flatMap((line) => {
        const grade = line.kept === undefined && line.ways.includes(way.id) ? gradeOf(plan, line) : undefined;
        const isBus = line.kind === 'trunk' || line.kind === 'drop';
        return isBus && grade !== undefined && cableGrades[grade].plugHoleMm.value > bore.mm
          ? [cableGrades[grade].plugHoleMm]
          : [];
      });
      const [hole] = tight;
      if (hole === undefined) return [];
      return [
        {
          about: [way.id],
          says: `The way from ${words(index, way.ends)} is ${bore.mm} mm wide; ${tight.length === 1 ? 'a bus cable goes' : `${tight.length} bus cables go`} through it whose moulded plug needs ${hole.value} mm.`,
          measured: { value: bore.mm, unit: 'mm' },
          limit: figurePart(hole),
          cure: 'Order cable without a plug at this end and a plug to fit on the spot, or widen the hole.',
        },
      ];
    }),
};
