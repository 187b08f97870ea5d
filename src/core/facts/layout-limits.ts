/** What a layout of a bus has to keep, limits of the standard and what the boat allows, each as it is spoken of. */
export const layoutLimitWords = {
  'device-count': 'the number of units',
  'one-drop': 'the length of one drop',
  'all-drops': 'the length of all drops together',
  length: 'the length from end to end',
  current: 'the current in the trunk',
  volts: 'the volts at the units',
  'tee-places': 'the places where tees may stand',
  'end-places': 'the places where the trunk may end',
} as const;

export type LayoutLimit = keyof typeof layoutLimitWords;

// reason: the keys of a fixed object are its own names
export const layoutLimits = Object.keys(layoutLimitWords) as LayoutLimit[];
