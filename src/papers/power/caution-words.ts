import { cautions } from '../../core/facts/cautions.ts';
import type { Plan } from '../../core/plan-shape.ts';

/** A caution as it stands beside the step that wants it. */
export interface CautionWords {
  readonly id: string;
  /** "Battery short circuit" */
  readonly title: string;
  readonly says: string;
  /** what decides, by name */
  readonly decides?: string;
}

const wordsOf = (ids: readonly string[]): CautionWords[] =>
  ids.flatMap((id) => {
    const caution = cautions.find((entry) => entry.id === id);
    if (caution === undefined) return [];
    const { hazard, text, deferTo } = caution;
    return [
      {
        id,
        title: `${hazard[0]?.toUpperCase()}${hazard.slice(1)}`,
        says: text,
        ...(deferTo === undefined ? {} : { decides: deferTo }),
      },
    ];
  });

/** What is said where somebody works at a bank, its bars or its main fuse: what its own entry asks for, each once. */
export const bankCautions = ({ banks }: Pick<Plan, 'banks'>): CautionWords[] => {
  const asked = new Set(banks.flatMap((bank) => bank.cautions));
  return banks.length === 0
    ? []
    : wordsOf(
        ['battery-short', 'short-energy', 'lithium', 'ac', 'stray'].filter(
          (id) => id === 'short-energy' || asked.has(id),
        ),
      );
};

/** What is said where a pilot can turn the rudder. */
export const steeringCautions = ({ drives }: Pick<Plan, 'drives'>): CautionWords[] =>
  drives.length === 0 ? [] : wordsOf(['pilot-drive']);

/** What is said where wires are led and joined. The boat file does not say what her engine burns, so petrol is always told of. */
export const wiringCautions = (): CautionWords[] => wordsOf(['petrol', 'licence', 'limits']);
