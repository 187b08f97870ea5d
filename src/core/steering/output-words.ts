import type { OutputWanted } from '../drives-shape.ts';

const kindWords = { 'reversing-motor': 'a motor turned both ways', 'solenoid-valves': 'two valves' } as const;

/** A kind of output as people read it. */
export const outputKind = (kind: string | undefined): string =>
  kind === 'solenoid-valves' ? kindWords['solenoid-valves'] : kindWords['reversing-motor'];

const clutchWords = ({ clutch, clutchV, clutchA }: OutputWanted): string => {
  if (!clutch) return '';
  const figures = [clutchV === undefined ? [] : `${clutchV} V`, clutchA === undefined ? [] : `${clutchA} A`].flat();
  return `, with a clutch output${figures.length === 0 ? '' : ` of ${figures.join(' and ')}`}`;
};

/** Which output would work a drive, as a cure. */
export const outputCure = (instead: OutputWanted | undefined): string => {
  if (instead === undefined) return 'Take a computer and a drive that are made for each other.';
  const { works, motorV, peakA } = instead;
  const amps = peakA === undefined ? 'more than the usual outputs give' : `${peakA} A at its peak`;
  return `What works this drive: an output for ${outputKind(works)}, ${motorV} V, ${amps}${clutchWords(instead)}.`;
};
