let skew: number | undefined;

/** Notes how far this phone’s clock is from the laptop’s, by the date of an answer; a whole second is all that a date tells. */
export const noteLaptopDate = (date: string | null): void => {
  const laptopMs = Date.parse(date ?? '');
  if (!Number.isNaN(laptopMs)) skew = Date.now() - laptopMs;
};

/** How far this phone’s clock is ahead of the laptop’s, milliseconds; undefined until the laptop was heard. */
export const clockSkewMs = (): number | undefined => skew;
