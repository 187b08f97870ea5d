import type { Heard } from '../store/phone-link.ts';
import { noteLaptopDate } from './clock-skew.ts';

const longestMs = 10_000;

/** One request to the laptop. */
export interface Asked {
  readonly path: string;
  readonly method?: 'GET' | 'POST' | 'PUT';
  readonly token?: string;
  /** asked only for what is another than this */
  readonly tag?: string | undefined;
  readonly json?: unknown;
  readonly picture?: Blob;
  readonly mostMs?: number;
}

/** An answer that was heard. */
export interface Told {
  readonly json: unknown;
  readonly tag: string;
  readonly isAsBefore: boolean;
}

const unheard = { kind: 'unheard' } as const;

const headersOf = ({ token, tag, json, picture }: Asked): Record<string, string> => ({
  ...(token === undefined ? {} : { authorization: `Bearer ${token}` }),
  ...(tag === undefined ? {} : { 'if-none-match': `"${tag}"` }),
  ...(json === undefined ? {} : { 'content-type': 'application/json' }),
  ...(picture === undefined ? {} : { 'content-type': picture.type }),
});

/** The sentence of an answer, with what to do about it; undefined where it is not the laptop that speaks. */
const saysIn = (json: unknown): string | undefined => {
  if (typeof json !== 'object' || json === null || !('says' in json) || typeof json.says !== 'string') return undefined;
  return 'whatToDo' in json && typeof json.whatToDo === 'string' ? `${json.says} ${json.whatToDo}` : json.says;
};

const afterOf = (response: Response): { afterS?: number } => {
  const afterS = Number(response.headers.get('retry-after') ?? Number.NaN);
  return Number.isFinite(afterS) ? { afterS } : {};
};

/** What an answer means; whatever does not speak as the laptop does, such as the page of a harbour’s wifi, is not heard. */
const heardIn = async (response: Response): Promise<Heard<Told>> => {
  const tag = (response.headers.get('etag') ?? '').replace(/^W\//, '').replaceAll('"', '');
  if (response.status === 304) return { kind: 'heard', value: { json: undefined, tag, isAsBefore: true } };
  const json: unknown = await response.json();
  if (response.ok) return { kind: 'heard', value: { json, tag, isAsBefore: false } };
  const says = saysIn(json);
  if (says === undefined) return unheard;
  if (response.status === 429 || response.status >= 500) return { ...unheard, ...afterOf(response), says };
  return response.status === 401 ? { kind: 'unpaired' } : { kind: 'refused', says };
};

/** Asks the laptop that served this page; nothing is thrown, and nobody is waited for longer than ten seconds. */
export const askLaptop = async (asked: Asked): Promise<Heard<Told>> => {
  const { path, method = 'GET', json, picture, mostMs = longestMs } = asked;
  const gone = new AbortController();
  const timer = setTimeout(() => gone.abort(), mostMs);
  const body = picture ?? (json === undefined ? undefined : JSON.stringify(json));
  try {
    const response = await fetch(`/api/phone/${path}`, {
      method,
      headers: headersOf(asked),
      cache: 'no-store',
      signal: gone.signal,
      ...(body === undefined ? {} : { body }),
    });
    noteLaptopDate(response.headers.get('date'));
    return await heardIn(response);
  } catch {
    return unheard;
  } finally {
    clearTimeout(timer);
  }
};
