/** Where the keyboard goes among so many things when a key is pressed on one of them; undefined when the key is not for it. */
export const nextInRow = ({ key, at, count }: { key: string; at: number; count: number }): number | undefined => {
  if (count === 0) return undefined;
  switch (key) {
    case 'ArrowRight':
    case 'ArrowDown':
      return (at + 1) % count;
    case 'ArrowLeft':
    case 'ArrowUp':
      return (at + count - 1) % count;
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return undefined;
  }
};

/** Makes exactly one of the elements a stop for the Tab key, so that ninety balloons are one stop and not ninety. */
export const setTabStop = (elements: readonly Element[], at: number): void => {
  for (const [place, element] of elements.entries()) element.setAttribute('tabindex', place === at ? '0' : '-1');
};
