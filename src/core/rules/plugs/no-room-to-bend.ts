import { lengthMm } from '../../boat/measure.ts';
import { bendFactors, leastBend } from '../../facts/bends.ts';
import type { LaidPlan, LineEntry } from '../../plan-shape.ts';
import { drawnCable } from '../../ways/way-fills.ts';
import type { Rule } from '../rule.ts';
import { sourceWords, unitName } from '../rule-words.ts';

/** Room a plug takes before its cable may bend, mm. */
const plugMm = 50;

const factorOf = (kind: LineEntry['kind']): number => {
  switch (kind) {
    case 'coax':
      return bendFactors['coax-once'].value;
    case 'ethernet':
      return bendFactors['ethernet-screened'].value;
    case 'trunk':
    case 'drop':
      return bendFactors.bus.value;
    default:
      return bendFactors.power.value;
  }
};

/** Least radius a new line may be bent at, mm: the larger of 100 mm and the multiple of its outside diameter. */
const radiusMm = (line: LineEntry, plan: Pick<LaidPlan, 'buses'>): number =>
  Math.max(leastBend.value, factorOf(line.kind) * drawnCable(line, plan.buses).outsideMm);

/** A tail that is shorter than its plug and a quarter turn breaks the cable behind the plug, or the plug. */
export const noRoomToBend: Rule = {
  id: 'plugs/no-room-to-bend',
  level: 'doubt',
  title: 'The tail of a unit leaves its cable no room to bend.',
  sources: ['practice-bend', 'memory-bend', 'aipu-bend'],
  check: ({ index, plan }) =>
    index.boat.kit.flatMap((unit) => {
      if (unit.tail === undefined) return [];
      const lines = plan.lines.filter(
        ({ from, to, kept }) => kept === undefined && [from, to].some((end) => end.startsWith(`${unit.id}.`)),
      );
      if (lines.length === 0) return [];
      const widest = Math.max(...lines.map((line) => radiusMm(line, plan)));
      const wantedMm = Math.round(plugMm + (Math.PI / 2) * widest);
      const tailMm = lengthMm(unit.tail).longestMm;
      if (tailMm >= wantedMm) return [];
      return [
        {
          about: [unit.id],
          says: `The tail of ${unitName(index, unit.id)} is at most ${tailMm} mm; its plug and a quarter turn of ${Math.round(widest)} mm radius take ${wantedMm} mm.`,
          measured: { value: tailMm, unit: 'mm' },
          limit: { value: wantedMm, unit: 'mm', source: sourceWords('practice-bend') },
          cure: 'Leave a longer tail, or use a plug with its cable to the side.',
        },
      ];
    }),
};
