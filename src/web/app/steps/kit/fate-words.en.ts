/** What a unit may become, in English; it comes with the cards, before the step Kit does. */
export const en = {
  becomes: (unit: string) => `What becomes of ${unit}`,
  inPhase: 'in phase',
  fate: { stays: 'stays', goes: 'goes ashore', comes: 'comes' },
} as const;
