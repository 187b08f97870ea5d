import type { BoatIndex } from '../boat/boat-index.ts';
import type { Kit } from '../boat/boat-schema.ts';
import type { Plug, Sheet } from '../boat/sheet.ts';
import { notedSettings } from '../facts/noted-settings.ts';
import type { WalkQuestion } from './walk-question.ts';

const isFed = ({ boat }: BoatIndex, port: string): boolean =>
  boat.supply.panels.some(({ circuits }) => circuits.some(({ feeds }) => feeds.includes(port)));

/** Front, back and label, as the walk asks for them. */
const asked = ['front', 'back', 'label'] as const;

const isPhotographed = ({ boat }: BoatIndex, unit: string): boolean =>
  asked.every((shows) => (boat.photos ?? []).some((photo) => photo.of === unit && photo.shows === shows));

/** Whether every one of some plugs has a part that was looked at aboard, or the sheet was filled in from a manual. */
const isSeen = ({ changes = [] }: Kit, sheet: Sheet, plugs: readonly Plug[], part: string): boolean =>
  sheet.source === 'manual' ||
  plugs.every(({ id }) => changes.some(({ path }) => path === `plugs.${id}` || path === `plugs.${id}.${part}`));

/** Plugs that end in wires, whose colours decide how they are joined. */
const withWires = ({ plugs }: Sheet): readonly Plug[] => plugs.filter(({ conductors = [] }) => conductors.length > 0);

/** What to look for on one unit that is aboard; one that goes is looked at as well, for its plugs and wires say what the new one meets. */
export const unitQuestions = (index: BoatIndex, unit: Kit, sheet: Sheet): WalkQuestion[] => {
  const about = { subject: 'unit', about: unit.id } as const;
  const wired = withWires(sheet);
  const onBus = sheet.ports.some(({ protocol }) => protocol === 'nmea2000');
  const supplies = sheet.ports.filter(({ protocol, role }) => protocol === 'dc' && role !== 'talk');
  return [
    { kind: 'photos', ...about, known: isPhotographed(index, unit.id) },
    { kind: 'serial', ...about, known: unit.aboard?.serial !== undefined },
    ...(sheet.plugs.length > 0
      ? [{ kind: 'plugs', ...about, known: isSeen(unit, sheet, sheet.plugs, 'connector') } as const]
      : []),
    ...(wired.length > 0
      ? [{ kind: 'wire-colours', ...about, known: isSeen(unit, sheet, wired, 'conductors') } as const]
      : []),
    ...(onBus ? [{ kind: 'terminator', ...about, known: sheet.terminator !== undefined } as const] : []),
    ...(supplies.length === 0
      ? []
      : [
          {
            kind: 'breaker',
            ...about,
            known: supplies.every(({ id }) => isFed(index, `${unit.id}.${id}`)),
          } as const,
        ]),
    ...(notedSettings.byKind[sheet.kind] === undefined
      ? []
      : [{ kind: 'settings', ...about, known: unit.aboard?.copied === true } as const]),
  ];
};
