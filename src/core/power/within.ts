/** Whether a figure keeps a limit, with a slack of 1e-9 of the limit for what binary fractions add: 5.125 x 1.25 and the like. */
export const within = ({ value, limit }: { readonly value: number; readonly limit: number }): boolean =>
  value <= limit + 1e-9 * Math.abs(limit);
