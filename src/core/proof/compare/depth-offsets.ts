import { proofLimits } from '../../facts/proof-limits.ts';
import type { Found } from './check.ts';
import { sendersOf } from './find-messages.ts';
import { deviceSays, lastOf } from './say.ts';
import type { Seen } from './seen.ts';

const depthMessage = 128_267;

/** What a sounder on a bus tells of its depth offset, beside what is to be set in it. */
export interface DepthOffset {
  readonly unit: string;
  readonly device: string;
  readonly toldM: number;
  readonly dueM: number;
  readonly verdict: 'right' | 'missing' | 'doubled' | 'other';
  readonly shown: Pick<Found, 'message' | 'atS' | 'bytes'>;
}

const verdictOf = (toldM: number, dueM: number): DepthOffset['verdict'] => {
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= proofLimits.offsetApart.value;
  if (near(toldM, dueM)) return 'right';
  if (dueM === 0 || near(toldM, 2 * dueM)) return 'doubled';
  return near(toldM, 0) ? 'missing' : 'other';
};

/** Every sounder heard with data that the settings sheet has an offset for. */
export const depthOffsets = ({ planned, buses }: Seen): DepthOffset[] =>
  buses.flatMap((bus) =>
    bus.units.flatMap(({ unit }) => {
      const due = planned.plan.typed.find(
        ({ kit, what, of, is }) => kit === unit && what === 'depth-offset' && of === undefined && is !== undefined,
      );
      if (due?.is === undefined) return [];
      const dueM = due.is;
      return sendersOf(bus, unit).flatMap((sender) => {
        const parts = sender.sends.find(({ pgn }) => pgn === depthMessage)?.parts ?? [];
        const last = parts.find(({ empty, messages }) => empty < messages)?.last;
        if (last === undefined) return [];
        const toldM = last.offset ?? 0;
        return [
          {
            unit,
            device: deviceSays(planned, bus, sender),
            toldM,
            dueM,
            verdict: verdictOf(toldM, dueM),
            shown: { message: depthMessage, ...lastOf(bus.evidenceOf(sender, depthMessage)[0]) },
          },
        ];
      });
    }),
  );
