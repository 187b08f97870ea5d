/** Given by circuits and batteries, and looked to before any reading. */
const supplied = [
  'bilge-pump',
  'high-water-alarm',
  'gas-alarm',
  'engine-start',
  'engine-stop',
  'steering',
  'horn',
  'navigation-lights',
] as const;

/** What a boat must not be without at times: in the order in which a list has them. */
export const essentialFunctions = [
  ...supplied,
  'depth',
  'vhf',
  'position',
  'heading',
  'ais',
  'shore-charging',
] as const;
export type EssentialFunction = (typeof essentialFunctions)[number];

/** Those that circuits or batteries give, as a person says; the others are readings and the radio, which the plan knows. */
export const suppliedFunctions = [...supplied, 'shore-charging'] as const satisfies readonly EssentialFunction[];
