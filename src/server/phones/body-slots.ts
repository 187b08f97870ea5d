/** A room for so many bodies at once: what they take together in memory is bounded by it. */
export const bodySlots = (most: number): (() => (() => void) | undefined) => {
  let taken = 0;
  return () => {
    if (taken >= most) return undefined;
    taken += 1;
    let isOver = false;
    return () => {
      if (!isOver) taken -= 1;
      isOver = true;
    };
  };
};
