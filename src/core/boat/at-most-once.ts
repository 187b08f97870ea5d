/**
 * Whether nothing stands in a list twice, and the sentence where it does; for `refine` of a schema.
 *
 * @example z.array(entry).refine(...atMostOnce(({ unit }: Entry) => unit, 'A unit stands once.'))
 */
export const atMostOnce = <Entry>(
  keyOf: (entry: Entry) => string,
  message: string,
): [(list: readonly Entry[]) => boolean, { message: string }] => [
  (list) => new Set(list.map(keyOf)).size === list.length,
  { message },
];
