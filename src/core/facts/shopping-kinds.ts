/** Kinds of item of an order, in the order of its list. */
export const shoppingKinds = [
  'unit',
  'trunk',
  'drop',
  'bus-part',
  'cable',
  'plug',
  'adapter',
  'power',
  'passage',
  'fixing',
  'label',
  'spare',
] as const;
