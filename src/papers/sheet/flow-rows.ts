/** Sets things of given widths in rows from left to right, like words on a page. */
export const flowRows = (
  widthsMm: readonly number[],
  { fromMm, toMm, gapMm }: { fromMm: number; toMm: number; gapMm: number },
): { xMm: number; row: number }[] => {
  let xMm = fromMm;
  let row = 0;
  return widthsMm.map((widthMm) => {
    if (xMm > fromMm && xMm + widthMm > toMm) {
      xMm = fromMm;
      row += 1;
    }
    const place = { xMm, row };
    xMm += widthMm + gapMm;
    return place;
  });
};
