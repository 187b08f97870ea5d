/** What a boat must not be without at times: in the order in which a list has them. */
export const essentialFunctions = [
  'bilge-pump',
  'high-water-alarm',
  'gas-alarm',
  'engine-start',
  'engine-stop',
  'steering',
  'horn',
  'navigation-lights',
  'depth',
  'vhf',
  'position',
  'heading',
  'ais',
  'shore-charging',
] as const;
export type EssentialFunction = (typeof essentialFunctions)[number];

/** Those that circuits or batteries give, as a person says; the others are readings and the radio, which the plan knows. */
export const suppliedFunctions = [
  'bilge-pump',
  'high-water-alarm',
  'gas-alarm',
  'engine-start',
  'engine-stop',
  'steering',
  'horn',
  'navigation-lights',
  'shore-charging',
] as const satisfies readonly EssentialFunction[];
