import type { AirDraftPart } from '../../boat/measures.ts';
import type { How } from '../../settings-sheet-shape.ts';

/** How well a sum is known: as badly as the worst of its parts. */
export const worstHow = (hows: readonly How[]): How => {
  const order: readonly How[] = ['taped', 'at-sea', 'papers', 'drawn', 'guessed'];
  return order[Math.max(0, ...hows.map((how) => order.indexOf(how)))] ?? 'guessed';
};

/** The air draft at one time, and the part on its very top. */
export interface AirDraft {
  readonly sumM: number;
  readonly stack: readonly AirDraftPart[];
  readonly top?: AirDraftPart;
}

/**
 * Air draft from its named parts: what stands one on the other is summed, and of the units that stand beside each other on top the
 * highest counts: h = sum of parts + the greatest of the units aboard. No credit for heel.
 *
 * @example airDraft(parts, (unit) => unit !== 'old-whip').sumM // 16.4
 */
export const airDraft = (parts: readonly AirDraftPart[], isAboard: (unit: string) => boolean): AirDraft => {
  const stack = parts.filter(({ unit }) => unit === undefined);
  const tops = parts.filter(({ unit }) => unit !== undefined && isAboard(unit));
  const [top] = tops.toSorted((a, b) => b.length.valueM - a.length.valueM);
  const sumM = [...stack, ...(top === undefined ? [] : [top])].reduce((sum, { length }) => sum + length.valueM, 0);
  return { sumM, stack, ...(top === undefined ? {} : { top }) };
};
