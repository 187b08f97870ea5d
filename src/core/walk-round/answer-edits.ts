import type { Setting } from '../boat/aboard.ts';
import type { EditParams } from '../boat/edits/index.ts';
import type { EditCall } from '../boat/history.ts';
import type { Photo } from '../boat/photo.ts';
import type { Bank, Panel } from '../boat/supply.ts';

/** An answer found aboard, by the kind of its question. */
export type WalkAnswer =
  | { readonly kind: 'way-seen'; readonly way: string; readonly known: 'seen' | 'pulled' }
  | { readonly kind: 'way-length'; readonly way: string; readonly valueM: number }
  | { readonly kind: 'way-bore'; readonly way: string; readonly mm: number }
  | { readonly kind: 'photos'; readonly photo: Photo }
  | { readonly kind: 'terminator'; readonly unit: string; readonly has: boolean }
  | { readonly kind: 'breaker'; readonly port: string; readonly circuit: string }
  | ({ readonly kind: 'bank-plate' } & Pick<
      EditParams<'change-bank'>,
      'bank' | 'chemistry' | 'capacityAh' | 'coldCrankingA'
    >)
  | { readonly kind: 'bank-fuse'; readonly bank: string; readonly main: NonNullable<Bank['main']> }
  | { readonly kind: 'bank-switch'; readonly bank: string; readonly has: boolean }
  | { readonly kind: 'bank-parted'; readonly bank: string; readonly by: NonNullable<Bank['partedBy']> }
  | { readonly kind: 'negative'; readonly place: string }
  | ({ readonly kind: 'place-is-so' } & Pick<EditParams<'change-place'>, 'place' | 'exposure' | 'reach' | 'tees'>)
  | { readonly kind: 'no-such-place'; readonly place: string }
  | { readonly kind: 'other-boxes'; readonly place: string }
  | { readonly kind: 'no-such-way'; readonly way: string }
  | { readonly kind: 'way-holds'; readonly way: string }
  | { readonly kind: 'serial'; readonly unit: string; readonly serial: string; readonly software?: string }
  | ({ readonly kind: 'plugs' } & EditParams<'see-plug'>)
  | { readonly kind: 'settings'; readonly unit: string; readonly settings: readonly Setting[] }
  | { readonly kind: 'all-copied'; readonly unit: string }
  | {
      readonly kind: 'panel-feeder';
      readonly panel: string;
      readonly feeder: NonNullable<Panel['feeder']>;
      readonly mainA?: number;
    }
  | { readonly kind: 'panel-circuits'; readonly panel: string; readonly free: number };

/** No tape reads finer than a millimetre. */
const millimetres = (valueM: number): number => Math.round(valueM * 1000) / 1000;

/**
 * The edit by which an answer of the walk comes into the boat.
 *
 * @example answerEdit({ kind: 'way-bore', way: 'w4', mm: 25 }) // change-way, bore 25 mm, taped
 */
export const answerEdit = (answer: WalkAnswer): EditCall => {
  switch (answer.kind) {
    case 'way-seen':
      return { edit: 'change-way', params: { way: answer.way, known: answer.known } };
    case 'way-length':
      return {
        edit: 'tape-length',
        params: { way: answer.way, length: { valueM: millimetres(answer.valueM), how: 'taped' } },
      };
    case 'way-bore':
      return { edit: 'change-way', params: { way: answer.way, bore: { mm: answer.mm, how: 'taped' } } };
    case 'photos':
      return { edit: 'add-photo', params: answer.photo };
    case 'terminator':
      return {
        edit: 'change-sheet',
        params: { unit: answer.unit, path: 'terminator', value: answer.has, how: 'seen' },
      };
    case 'breaker':
      return { edit: 'feed-port', params: { port: answer.port, circuit: answer.circuit } };
    case 'bank-plate': {
      const { kind: _, ...plate } = answer;
      return { edit: 'change-bank', params: { ...plate, seen: true } };
    }
    case 'bank-fuse':
      return { edit: 'change-bank', params: { bank: answer.bank, main: answer.main } };
    case 'bank-switch':
      return { edit: 'change-bank', params: { bank: answer.bank, isolator: answer.has } };
    case 'bank-parted':
      return { edit: 'change-bank', params: { bank: answer.bank, partedBy: answer.by } };
    case 'negative':
      return { edit: 'set-negative', params: { place: answer.place } };
    case 'place-is-so': {
      const { kind: _, ...place } = answer;
      return { edit: 'change-place', params: { ...place, seen: true } };
    }
    case 'no-such-place':
      return { edit: 'remove-place', params: { place: answer.place } };
    case 'other-boxes':
      return { edit: 'change-place', params: { place: answer.place, counted: true } };
    case 'no-such-way':
      return { edit: 'remove-way', params: { way: answer.way } };
    case 'way-holds':
      return { edit: 'change-way', params: { way: answer.way, counted: true } };
    case 'serial': {
      const { kind: _, ...noted } = answer;
      return { edit: 'note-aboard', params: noted };
    }
    case 'plugs': {
      const { kind: _, ...seen } = answer;
      return { edit: 'see-plug', params: seen };
    }
    case 'settings':
      return { edit: 'note-aboard', params: { unit: answer.unit, settings: [...answer.settings] } };
    case 'all-copied':
      return { edit: 'note-aboard', params: { unit: answer.unit, copied: true } };
    case 'panel-feeder': {
      const { kind: _, ...feeder } = answer;
      return { edit: 'change-panel', params: feeder };
    }
    case 'panel-circuits':
      return { edit: 'change-panel', params: { panel: answer.panel, freeWays: answer.free } };
  }
};
