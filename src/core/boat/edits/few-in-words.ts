/** A few things in words, the rest by their number: `Helm display, Old radio and 3 more`. */
export const fewInWords = (things: readonly string[]): string => {
  const [first = '', second, third] = things;
  if (second === undefined) return first;
  if (things.length === 2) return `${first} and ${second}`;
  if (things.length === 3) return `${first}, ${second} and ${third}`;
  return `${first}, ${second} and ${things.length - 2} more`;
};
