/** Whether a figure keeps a limit, with a slack of 1e-9 of the limit: 0.8 x 3 x 1.25 must be right for a fuse of 3 A in binary too. */
export const within = ({ value, limit }: { readonly value: number; readonly limit: number }): boolean =>
  value <= limit + 1e-9 * Math.abs(limit);
