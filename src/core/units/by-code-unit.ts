/** Order of two strings by code unit, the only order used in a plan (never by locale). */
export const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
