/** Which step the keys ask for: undo, or redo; undefined for any other key. */
export const stepOfKey = (event: {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}): 'undo' | 'redo' | undefined => {
  // exactly one of the two: Ctrl, or the command key
  if (event.ctrlKey === event.metaKey || event.altKey) return undefined;
  switch (event.key.toLowerCase()) {
    case 'z':
      return event.shiftKey ? 'redo' : 'undo';
    case 'y':
      return event.ctrlKey && !event.shiftKey ? 'redo' : undefined;
    default:
      return undefined;
  }
};
