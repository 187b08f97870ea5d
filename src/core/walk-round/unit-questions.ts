import type { BoatIndex } from '../boat/boat-index.ts';
import type { Kit } from '../boat/boat-schema.ts';
import type { Sheet } from '../boat/sheet.ts';
import { copiedSettings } from '../facts/copied-settings.ts';
import type { WalkQuestion } from './walk-question.ts';

const isFed = ({ boat }: BoatIndex, port: string): boolean =>
  boat.supply.panels.some(({ circuits }) => circuits.some(({ feeds }) => feeds.includes(port)));

/** Front, back and label, as the walk asks for them. */
const asked = ['front', 'back', 'label'] as const;

const isPhotographed = ({ boat }: BoatIndex, unit: string): boolean =>
  asked.every((shows) => (boat.photos ?? []).some((photo) => photo.of === unit && photo.shows === shows));

/** Plugs that end in wires of a pair, whose colours decide how they are joined. */
const hasPairs = (sheet: Sheet): boolean =>
  sheet.ports.some(({ protocol }) => protocol === 'nmea0183' || protocol === 'analog' || protocol === 'single-wire');

/** What to look for on one unit that is aboard; of one that goes only what must be kept or known before it is taken off. */
export const unitQuestions = (index: BoatIndex, unit: Kit, sheet: Sheet): WalkQuestion[] => {
  const about = { subject: 'unit', about: unit.id } as const;
  const stays = unit.fate === 'stays';
  const isRead = sheet.source !== 'typical';
  const onBus = sheet.ports.some(({ protocol }) => protocol === 'nmea2000');
  const supplies = sheet.ports.filter(({ protocol, role }) => protocol === 'dc' && role !== 'talk');
  return [
    { kind: 'photos', ...about, known: isPhotographed(index, unit.id) },
    { kind: 'serial', ...about, known: unit.identity !== undefined },
    ...(stays && sheet.plugs.length > 0 ? [{ kind: 'plugs', ...about, known: isRead } as const] : []),
    ...(stays && hasPairs(sheet) ? [{ kind: 'wire-colours', ...about, known: isRead } as const] : []),
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
    ...(copiedSettings.byKind[sheet.kind] !== undefined ? [{ kind: 'settings', ...about, known: false } as const] : []),
  ];
};
