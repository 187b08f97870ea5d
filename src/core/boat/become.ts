import { sameValue } from './same-value.ts';

type Fields = Record<string, unknown>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const becomeList = (draft: unknown[], wanted: readonly unknown[]): void => {
  draft.splice(wanted.length);
  for (const [at, value] of wanted.entries()) becomePart(draft, at, value);
};

const becomePart = (draft: Fields | unknown[], key: string | number, wanted: unknown): void => {
  // reason: a list is asked by number, an object by name
  const fields = draft as Fields;
  const now = fields[key];
  if (sameValue(now, wanted)) return;
  if (isFields(now) && isFields(wanted)) become(now, wanted);
  else if (Array.isArray(now) && Array.isArray(wanted)) becomeList(now, wanted);
  else fields[key] = wanted;
};

/** Makes a draft say what another value says, touching only what differs, so that the step it makes stays small. */
export const become = (draft: object, wanted: object): void => {
  // reason: a draft of a JSON object is an object of names
  const fields = draft as Fields;
  const names = new Map<string, unknown>(Object.entries(wanted));
  for (const name of Object.keys(fields)) if (!names.has(name)) delete fields[name];
  for (const [name, value] of names) becomePart(fields, name, value);
};
