/** Where something stands in parsed JSON. */
export type DataPath = readonly (string | number)[];

/** The paths of all that stands in some parsed JSON, the whole first. */
export const placesIn = (value: unknown, path: DataPath = []): DataPath[] => {
  if (typeof value !== 'object' || value === null) return [path];
  const entries: [string | number, unknown][] = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  return [path, ...entries.flatMap(([step, inner]) => placesIn(inner, [...path, step]))];
};

/** What stands at a path; undefined where there is nothing. */
export const valueAt = (data: unknown, path: DataPath): unknown => {
  let value = data;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = Reflect.get(value, step);
  }
  return value;
};

/** Stands for an entry that is taken out. */
export const goneEntry = Symbol('gone');

/** A copy of what leads to a path, with something else there; nothing changes where the path leads nowhere. */
export const withAt = (data: unknown, [step, ...rest]: DataPath, value: unknown): unknown => {
  // JSON has no undefined
  if (step === undefined) return value === undefined ? goneEntry : value;
  if (typeof data !== 'object' || data === null) return data;
  // a list that was cut short before has no such entry, and JSON has no gaps
  if (Array.isArray(data) && !Object.hasOwn(data, step)) return data;
  const inner = withAt(Reflect.get(data, step), rest, value);
  if (Array.isArray(data)) {
    const copy = [...data];
    if (inner === goneEntry) copy.splice(Number(step), 1);
    else copy[Number(step)] = inner;
    return copy;
  }
  // defined and not set, so that a name like that of a prototype is one like any other
  const copy = { ...data };
  if (inner === goneEntry) Reflect.deleteProperty(copy, step);
  else Object.defineProperty(copy, step, { value: inner, enumerable: true, configurable: true, writable: true });
  return copy;
};
