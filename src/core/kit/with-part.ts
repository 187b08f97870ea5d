/**
 * A thing with one part of it said otherwise; a part that is not known stands nowhere.
 *
 * @example withPart({ baud: 4800 }, 'baud', undefined) // {}
 */
export const withPart = <Of extends object, Key extends keyof Of>(of: Of, key: Key, value: Of[Key] | undefined): Of => {
  const { [key]: _, ...rest } = of;
  // reason: the same thing but for one part, of the type that this part has
  return (value === undefined ? rest : { ...rest, [key]: value }) as Of;
};
