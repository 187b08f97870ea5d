import type { BoatLink, Heard, ReadText } from '../store/phone-link.ts';
import { askLaptop, type Told } from './ask-laptop.ts';

/** A photo on a weak link takes its time. */
const pictureMs = 90_000;

const textOf = (heard: Heard<Told>, read: (json: unknown) => string | undefined): Heard<ReadText> => {
  if (heard.kind !== 'heard') return heard;
  const { isAsBefore, json, tag } = heard.value;
  if (isAsBefore) return { kind: 'heard', value: 'as before' };
  const text = read(json);
  return text === undefined ? { kind: 'unheard' } : { kind: 'heard', value: { text, tag } };
};

const logIn = (json: unknown): string | undefined =>
  typeof json === 'object' && json !== null && 'text' in json && typeof json.text === 'string' ? json.text : undefined;

const done = (heard: Heard<Told>): Heard<true> => (heard.kind === 'heard' ? { kind: 'heard', value: true } : heard);

/** One boat on the laptop, over http; `token` is asked each time, for a phone may be paired anew meanwhile. */
export const httpLink = (boat: string, token: () => string | undefined): BoatLink => {
  const at = `boats/${encodeURIComponent(boat)}`;
  const paired = <Value>(ask: (token: string) => Promise<Heard<Value>>): Promise<Heard<Value>> => {
    const own = token();
    return own === undefined ? Promise.resolve({ kind: 'unpaired' }) : ask(own);
  };
  return {
    sheet: (tag) =>
      paired(async (own) =>
        textOf(await askLaptop({ path: `${at}/sheet`, token: own, tag }), (json) => JSON.stringify(json)),
      ),
    log: (tag) => paired(async (own) => textOf(await askLaptop({ path: `${at}/log`, token: own, tag }), logIn)),
    add: (entries) =>
      paired(async (own) =>
        done(await askLaptop({ path: `${at}/log`, method: 'POST', token: own, json: { entries } })),
      ),
    putPicture: (hash, picture) =>
      paired(async (own) =>
        done(
          await askLaptop({ path: `${at}/pictures/${hash}`, method: 'PUT', token: own, picture, mostMs: pictureMs }),
        ),
      ),
  };
};
