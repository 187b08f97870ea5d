import type { LogEntry } from '../../../core/log/log-entry.ts';
import { isEntry } from './waiting-entries.ts';

/** Entries of one boat on their way from the page under one address of the laptop to the page under another. */
export interface Carried {
  readonly boat: { readonly id: string; readonly name: string };
  readonly entries: readonly LogEntry[];
}

const isBoat = (value: unknown): value is Carried['boat'] =>
  typeof value === 'object' &&
  value !== null &&
  'id' in value &&
  typeof value.id === 'string' &&
  'name' in value &&
  typeof value.name === 'string';

/** A browser takes addresses of two million signs; nothing that was written in weeks comes near. */
const mostSigns = 1_500_000;

/**
 * What waits, as text for the part of an address that is never sent. Photos are left out: their pictures are too large.
 *
 * @example carriedText({ boat, entries }) // 'eyJib2F0…'
 */
export const carriedText = ({ boat, entries }: Carried): string => {
  const bytes = new TextEncoder().encode(
    JSON.stringify({ boat, entries: entries.filter(({ kind }) => kind !== 'photo') }),
  );
  const signs = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(signs).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
};

/** What such a text carries; undefined where it is none. It comes from outside: the laptop checks each entry before it keeps it. */
export const carriedIn = (text: string): Carried | undefined => {
  if (text.length > mostSigns) return undefined;
  try {
    const signs = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
    const json: unknown = JSON.parse(new TextDecoder().decode(Uint8Array.from(signs, (sign) => sign.charCodeAt(0))));
    if (typeof json !== 'object' || json === null || !('boat' in json) || !('entries' in json)) return undefined;
    const { boat, entries } = json;
    return isBoat(boat) && Array.isArray(entries) ? { boat, entries: entries.filter(isEntry) } : undefined;
  } catch {
    return undefined;
  }
};
