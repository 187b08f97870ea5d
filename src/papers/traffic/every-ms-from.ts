const dayMs = 86_400_000;

/**
 * How often a message is sent, read from what a person wrote, ms; undefined where it is no such time.
 *
 * @example everyMsFrom('0,5 s') // 500
 */
export const everyMsFrom = (text: string): number | undefined => {
  const [, figure, unit] = /^(\d+(?:[.,]\d+)?) ?(ms|s)?$/.exec(text.trim()) ?? [];
  if (figure === undefined) return undefined;
  const everyMs = Number(figure.replace(',', '.')) * (unit === 's' ? 1000 : 1);
  return everyMs > 0 && everyMs <= dayMs ? everyMs : undefined;
};
