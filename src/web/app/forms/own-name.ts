const key = 'fairlead-own-name';

/** Who noted something last on this machine, to be proposed the next time; empty where nobody did. */
export const ownName = (): string => {
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    // A private window may bar storage; the name is then typed each time.
    return '';
  }
};

/** Keeps a name to be proposed the next time. */
export const keepOwnName = (name: string): void => {
  try {
    localStorage.setItem(key, name);
  } catch {
    // as above
  }
};

/** That name as an entry bears it; nothing where there is none. */
export const ownSignature = (): { readonly by?: string } => {
  const by = ownName().trim().slice(0, 120);
  return by === '' ? {} : { by };
};
