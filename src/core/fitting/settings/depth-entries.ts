import type { Need } from '../../boat/boat-schema.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import { settingFigures } from '../../facts/setting-figures.ts';
import type { SettingEntry } from '../../sources-shape.ts';
import { type DepthReference, depthBelow } from '../depth/depth-below.ts';
import { depthOffsets } from '../depth/depth-offsets.ts';
import { lengthIn, unitsAt } from './device-unit.ts';
import { safeDepthM } from './safe-depth.ts';
import { type SheetInput, unitsOfKind, type Wanted } from './sheet-input.ts';
import { type KnownDepth, transducerDepth } from './transducer-depth.ts';

const unitOf = (port: string): string => port.split('.')[0] ?? port;

/** What a depth is counted from, as its name at a need or in a setting says it. */
const referenceOf = (named: string | undefined): DepthReference | undefined =>
  named === 'keel' ? 'keel' : named === 'waterline' ? 'surface' : named === 'transducer' ? 'transducer' : undefined;

/** What is added to the draft, the owner's own or the usual. */
export const depthMargins = ({ index: { boat } }: SheetInput) => ({
  draftM: boat.hull.draftM,
  wavesM: boat.measures?.wavesM ?? settingFigures['waves-and-squat'].value,
  doubtM: boat.measures?.doubtM ?? settingFigures['depth-doubt'].value,
});

const offsetIn = (
  input: SheetInput,
  { kit, reference }: { kit: string; reference: DepthReference },
  known: KnownDepth,
) => {
  const { surfaceM, keelM } = depthOffsets({
    draftM: input.index.boat.hull.draftM,
    transducerBelowWaterM: known.belowM,
  });
  const valueM = { surface: surfaceM, keel: keelM, transducer: 0 }[reference];
  const unit = unitsAt(input.index.boat.measures?.screens, kit).depth;
  return lengthIn({ valueM, unit, rounding: 'down' });
};

/** The unit whose soundings an offset is for, where that is another than the one it is entered in. */
const ofOther = (kit: string, source: string): Pick<Wanted, 'of'> => (source === kit ? {} : { of: source });

const offsetEntries = (input: SheetInput, { kit, reference, source: port = kit }: SettingEntry): Wanted[] => {
  const wanted = referenceOf(reference);
  const source = unitOf(port);
  const known = transducerDepth(input, source);
  return (wanted === undefined ? (['surface', 'keel'] as const) : [wanted]).map((one): Wanted => {
    const id = `${kit}:depth-offset:${source}:${one}`;
    const row = { id, kit, what: 'depth-offset', ...ofOther(kit, source), reference: one } as const;
    if (one === 'transducer')
      return { ...row, ...offsetIn(input, { kit, reference: one }, { belowM: 0, how: 'taped' }) };
    if (known === undefined) return { ...row, missing: 'transducer-depth' };
    return { ...row, ...offsetIn(input, { kit, reference: one }, known), how: known.how };
  });
};

/** Nothing in a unit behind the one that has it; said of one sounder only where the unit has an offset of its own for another. */
const nothingIn = (input: SheetInput, { kit, source: port = kit }: SettingEntry, isOwner: boolean): Wanted => {
  const source = unitOf(port);
  const unit = unitsAt(input.index.boat.measures?.screens, kit).depth;
  const row = { kit, what: 'depth-offset', setElsewhere: true } as const;
  const which = isOwner
    ? { id: `${kit}:depth-offset:${source}:none`, ...ofOther(kit, source) }
    : { id: `${kit}:depth-offset:none` };
  return { ...which, ...row, ...lengthIn({ valueM: 0, unit, rounding: 'nearest' }) };
};

/** The offset of each depth where it is entered, and nothing everywhere behind it. */
const offsets = (input: SheetInput): Wanted[] => {
  const owners = new Set(input.settings.filter(({ does }) => does === 'offset').map(({ kit }) => kit));
  return input.settings.flatMap((setting): Wanted[] => {
    if (setting.does === 'offset') return offsetEntries(input, setting);
    return setting.does === 'no-offset' ? [nothingIn(input, setting, owners.has(setting.kit))] : [];
  });
};

const alarm = (input: SheetInput, { at: kit, reference }: Need): Wanted => {
  const offset = input.settings.find(({ does, at }) => does === 'offset' && at.includes(kit));
  const from = referenceOf(reference) ?? referenceOf(offset?.reference) ?? 'transducer';
  const row = { id: `${kit}:depth-alarm`, kit, what: 'depth-alarm', reference: from } as const;
  const margins = depthMargins(input);
  const unit = unitsAt(input.index.boat.measures?.screens, kit).depth;
  const known = transducerDepth(input, unitOf(offset?.source ?? kit));
  if (from === 'transducer' && known === undefined) return { ...row, missing: 'transducer-depth' };
  const below = depthBelow({
    depthM: safeDepthM(margins),
    from: 'surface',
    draftM: margins.draftM,
    transducerBelowWaterM: known?.belowM ?? 0,
  });
  const valueM = { surface: below.surfaceM, keel: below.keelM, transducer: below.transducerM }[from];
  return {
    ...row,
    ...lengthIn({ valueM, unit, rounding: 'up' }),
    ...(from === 'transducer' ? { how: known?.how ?? 'guessed' } : {}),
  };
};

/** Offsets, alarms and safety depths, all from the one draft, each in the reference and the unit of its device. */
export const depthEntries = (input: SheetInput): Wanted[] => {
  const { index } = input;
  const last = lastPhase(index.boat);
  const shows = index.boat.needs.filter(({ reading, at }) => {
    const unit = index.kit.get(at);
    return reading === 'depth' && unit !== undefined && isAboard(unit, last);
  });
  const charts = unitsOfKind(index, ['display', 'plotter']);
  return [
    ...offsets(input),
    ...shows.map((need) => alarm(input, need)),
    ...charts.map(({ id: kit }): Wanted => {
      const unit = unitsAt(index.boat.measures?.screens, kit).depth;
      const valueM = safeDepthM(depthMargins(input));
      const row = { id: `${kit}:safety-depth`, kit, what: 'safety-depth', reference: 'surface' } as const;
      return { ...row, ...lengthIn({ valueM, unit, rounding: 'up' }) };
    }),
  ];
};
