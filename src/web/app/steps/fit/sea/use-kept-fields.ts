import { useCallback, useState } from 'react';

type Fields = Readonly<Record<string, string>>;

const read = (key: string): Fields => {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(key) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(Object.entries(kept).filter(([, value]) => typeof value === 'string'));
  } catch {
    // A private window may bar storage, and whatever else stands there is not ours: begin with nothing.
    return {};
  }
};

const keep = (key: string, fields: Fields): void => {
  try {
    sessionStorage.setItem(key, JSON.stringify(fields));
  } catch {
    // as above; what was typed is then kept as long as the page shows it
  }
};

/** What was typed into one calculator: it is still there when a wet thumb has gone elsewhere and back. */
export interface KeptFields {
  readonly get: (name: string) => string;
  readonly set: (name: string, value: string) => void;
  readonly clear: () => void;
}

export const useKeptFields = (calculator: string, boat: string): KeptFields => {
  const key = `fairlead-at-sea-${calculator}-${boat}`;
  const [fields, setFields] = useState<Fields>(() => read(key));
  const set = useCallback(
    (name: string, value: string) =>
      setFields((before) => {
        const after = { ...before, [name]: value };
        keep(key, after);
        return after;
      }),
    [key],
  );
  const clear = useCallback(() => {
    keep(key, {});
    setFields({});
  }, [key]);
  return { get: (name) => fields[name] ?? '', set, clear };
};
