import type { EditCall } from '../boat/history.ts';
import type { Photo } from '../boat/photo.ts';
import type { Bank, Protection } from '../boat/supply.ts';

/** An answer found aboard, by the kind of its question. What has no place in a boat file stays on the form. */
export type WalkAnswer =
  | { readonly kind: 'way-seen'; readonly way: string; readonly known: 'seen' | 'pulled' }
  | { readonly kind: 'way-length'; readonly way: string; readonly valueM: number }
  | { readonly kind: 'way-bore'; readonly way: string; readonly mm: number }
  | { readonly kind: 'photos'; readonly photo: Photo }
  | { readonly kind: 'terminator'; readonly unit: string; readonly has: boolean }
  | { readonly kind: 'breaker'; readonly port: string; readonly circuit: string }
  | {
      readonly kind: 'bank-fuse';
      readonly bank: string;
      readonly of: Protection['kind'];
      readonly ratingA?: number;
    }
  | { readonly kind: 'bank-switch'; readonly bank: string; readonly has: boolean }
  | { readonly kind: 'bank-parted'; readonly bank: string; readonly by: NonNullable<Bank['partedBy']> }
  | { readonly kind: 'negative'; readonly place: string }
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
    case 'bank-fuse': {
      const rating = answer.ratingA === undefined ? {} : { ratingA: answer.ratingA };
      return { edit: 'change-bank', params: { bank: answer.bank, main: { kind: answer.of, ...rating } } };
    }
    case 'bank-switch':
      return { edit: 'change-bank', params: { bank: answer.bank, isolator: answer.has } };
    case 'bank-parted':
      return { edit: 'change-bank', params: { bank: answer.bank, partedBy: answer.by } };
    case 'negative':
      return { edit: 'set-negative', params: { place: answer.place } };
    case 'panel-circuits':
      return { edit: 'change-panel', params: { panel: answer.panel, freeWays: answer.free } };
  }
};
