const plain = (text: string): string => text.trim().replace('−', '-').replace(',', '.');

/** A figure somebody typed, with a comma or a point; undefined where it is none. */
export const figureOf = (text: string): number | undefined =>
  /^[+-]?\d+(?:\.\d+)?$/.test(plain(text)) ? Number(plain(text)) : undefined;

/** A figure above nothing. */
export const amountOf = (text: string): number | undefined => {
  const figure = figureOf(text);
  return figure === undefined || figure <= 0 ? undefined : figure;
};

/** Seconds of a time typed as minutes and seconds, or as seconds. */
export const secondsOf = (text: string): number | undefined => {
  const clock = /^\s*(\d{1,3}):([0-5]?\d)\s*$/.exec(text);
  return clock === null ? amountOf(text) : Number(clock[1]) * 60 + Number(clock[2]) || undefined;
};
