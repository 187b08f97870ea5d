/** An age in words, as short as can be: `0.4 s`, `12 s`, `3 min`. */
export const ageWords = (ageMs: number): string => {
  if (ageMs < 9950) return `${(ageMs / 1000).toFixed(1)} s`;
  return ageMs < 119_500 ? `${Math.round(ageMs / 1000)} s` : `${Math.round(ageMs / 60_000)} min`;
};
