import { expect, test } from 'vitest';
import { essentialFunctions } from './essential-functions.ts';
import { functionFallbacks } from './fallback-kit.ts';

test('every essential function has something at hand while it is dark, said in words of its own', () => {
  const said = essentialFunctions.map((one) => functionFallbacks[one].says);
  expect(new Set(said).size).toBe(essentialFunctions.length);
  for (const words of said) expect(words).toMatch(/^[a-z].{20,}[^.]$/);
});
