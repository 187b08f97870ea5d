import { deviceKind } from '../../facts/device-kinds.ts';
import type { SurveySender } from './survey-report.ts';

/** What a sender is, in plain words, and the kind its sheet would have. Never a maker's word. */
export const senderKind = ({ name, sends }: SurveySender): { readonly kind: string; readonly words: string } =>
  deviceKind(
    name,
    sends.map(({ pgn }) => pgn),
  );
