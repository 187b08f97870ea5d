/** Degrees with their sign and one decimal, as a coefficient is printed: "+1.2°". */
export const signedDegrees = (degrees: number): string => {
  const text = Math.abs(degrees).toFixed(1);
  return `${Number(text) === 0 ? '' : degrees < 0 ? '−' : '+'}${text}°`;
};
