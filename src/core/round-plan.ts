const rounded = (value: number): number => {
  const at = Math.round(value * 1e6) / 1e6;
  return Object.is(at, -0) ? 0 : at;
};

/** Any plain value with every number in it rounded to 1e-6: done once, at the edge of a plan, so that no step computes with rounded figures. */
export const roundPlan = <Value>(value: Value): Value => {
  if (typeof value === 'number') return rounded(value) as Value;
  if (Array.isArray(value)) return value.map((entry: unknown) => roundPlan(entry)) as Value;
  if (typeof value !== 'object' || value === null) return value;
  // a plain loop, as a plan has tens of thousands of values
  const names = Object.keys(value) as (keyof Value)[];
  const own: Partial<Value> = {};
  for (const name of names) own[name] = roundPlan(value[name]);
  return own as Value;
};
