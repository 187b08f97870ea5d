/** Whether the browser has promised to keep what it holds for this site. */
export type Promised = 'promised' | 'may-go';

const lent = (): StorageManager | undefined =>
  // over plain http none is lent
  typeof navigator === 'object' && 'storage' in navigator ? navigator.storage : undefined;

/** Asks the browser to keep what it holds for this site until a person clears it; some ask the person, most decide by use. */
export const askToPersist = async (): Promise<void> => {
  try {
    const storage = lent();
    if ((await storage?.persisted()) === false) await storage?.persist();
  } catch {
    // a browser that does not answer has promised nothing
  }
};

/** What the browser has promised so far. */
export const promisedSoFar = async (): Promise<Promised> => {
  try {
    return (await lent()?.persisted()) === true ? 'promised' : 'may-go';
  } catch {
    return 'may-go';
  }
};
