import type { Heard } from '../store/phone-link.ts';
import { pairedKey, type Shelf } from '../store/shelf.ts';
import { askLaptop } from './ask-laptop.ts';

/** What makes the laptop know this phone: the token, and the name it signs with. */
export interface Paired {
  readonly token: string;
  readonly name: string;
}

/** One boat of the laptop’s folder. */
export interface BoatOnLaptop {
  readonly id: string;
  readonly name: string;
}

const isText = (value: unknown): value is string => typeof value === 'string';

const fieldOf = (value: unknown, field: string): unknown =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[field] : undefined;

const pairedIn = (json: unknown): Paired | undefined => {
  const [token, name] = [fieldOf(json, 'token'), fieldOf(fieldOf(json, 'device'), 'name') ?? fieldOf(json, 'name')];
  return isText(token) && isText(name) ? { token, name } : undefined;
};

/** How this phone is paired, as all its tabs know it. */
export const pairedOn = (shelf: Shelf): Paired | undefined => {
  try {
    return pairedIn(JSON.parse(shelf.get(pairedKey) ?? 'null'));
  } catch {
    return undefined;
  }
};

/** Pairs the phone by the code that the laptop shows. */
export const pair = async (shelf: Shelf, wish: { code: string; name: string }): Promise<Heard<Paired> | 'full'> => {
  const heard = await askLaptop({ path: 'pair', method: 'POST', json: wish });
  if (heard.kind !== 'heard') return heard;
  const paired = pairedIn(heard.value.json);
  if (paired === undefined) return { kind: 'unheard' };
  return shelf.set(pairedKey, JSON.stringify(paired)) ? { kind: 'heard', value: paired } : 'full';
};

const boatIn = (value: unknown): BoatOnLaptop[] => {
  const [id, name] = [fieldOf(value, 'id'), fieldOf(value, 'name')];
  return isText(id) && isText(name) ? [{ id, name }] : [];
};

/** The boats of a list, as the laptop sends it or as it was kept. */
export const boatsIn = (json: unknown): readonly BoatOnLaptop[] => (Array.isArray(json) ? json.flatMap(boatIn) : []);

export const boatsOnLaptop = async (token: string): Promise<Heard<readonly BoatOnLaptop[]>> => {
  const heard = await askLaptop({ path: 'boats', token });
  return heard.kind === 'heard' ? { kind: 'heard', value: boatsIn(heard.value.json) } : heard;
};
