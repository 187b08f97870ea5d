import { byCodeUnit } from '../boat/ids.ts';

/**
 * JSON text after RFC 8785: no spaces, keys in order of their UTF-16 code units, numbers and strings as ECMAScript writes
 * them; fields that are undefined are left out. Takes numbers, strings, booleans, lists and plain objects.
 *
 * @example canonicalJson({ b: 1, a: [true] }) // '{"a":[true],"b":1}'
 */
export const canonicalJson = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const fields = Object.entries(value)
      .filter(([, field]) => field !== undefined)
      .sort(([one], [other]) => byCodeUnit(one, other))
      .map(([key, field]) => `${JSON.stringify(key)}:${canonicalJson(field)}`);
    return `{${fields.join(',')}}`;
  }
  return JSON.stringify(value);
};
