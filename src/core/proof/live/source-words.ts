import type { SourceState } from './source-watch.ts';

const seconds = (ms: number): string => {
  const whole = Math.max(0, Math.round(ms / 1000));
  return whole < 120 ? `${whole} s` : `${Math.round(whole / 60)} min`;
};

const at = (baud: number | undefined): string => (baud === undefined ? '' : ` at ${baud} baud`);

type Garbage = Extract<SourceState, { kind: 'garbage' }>;

const garbageWords = ({ baud, tryBaud, searching }: Garbage): string => {
  if (searching === true) return 'Other speeds are tried in turn until lines come whole.';
  if (tryBaud !== undefined)
    return `The speed is likely wrong: try ${tryBaud} baud; if no speed helps, the wires A and B are swapped.`;
  return baud === undefined
    ? 'This is noise, or not text: set the gateway to NMEA 0183 or candump text.'
    : 'The speed is right, so this is noise or two talkers on one pair: look at the wires.';
};

/** How a source stands, in a sentence, with what to do where anything can be done. */
export const sourceWords = (state: SourceState, nowMs: number): string => {
  switch (state.kind) {
    case 'waiting':
      return `Listening${at(state.baud)}; nothing has come for ${seconds(nowMs - state.sinceMs)}.`;
    case 'flowing':
      return `Data flows${at(state.baud)}.`;
    case 'silent':
      return `Silent for ${seconds(nowMs - state.sinceMs)}: the link is there, and nothing comes over it.`;
    case 'gone':
      return `${state.says} ${state.whatToDo} It is tried again by itself.`;
    case 'garbage':
      return `${state.lostPct} % of what comes${at(state.baud)} makes no line. ${garbageWords(state)}`;
    case 'ended':
      return 'The source has ended.';
  }
};
