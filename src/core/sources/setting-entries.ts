import { byCodeUnit } from '../boat/ids.ts';
import { readingIds } from '../facts/reading-ids.ts';
import type { Reaches } from '../readings/reaches.ts';
import type { NumberEntry, SettingEntry } from '../sources-shape.ts';
import type { ChosenSources } from './choose-sources.ts';
import { reliedMessages } from './relied-messages.ts';
import { numberSettings } from './settings/number-settings.ts';
import { portSettings, type Setting } from './settings/port-settings.ts';
import { sourceSettings } from './settings/source-settings.ts';
import { turnSettings } from './settings/turn-settings.ts';

const order: readonly SettingEntry['does'][] = [
  'speed',
  'send',
  'stop',
  'stand-by',
  'pass',
  'no-echo',
  'no-heading',
  'number',
  'offset',
  'no-offset',
  'reference',
  'choose',
];

/** What a setting is about, so that one that many screens ask for stands once. */
const whatOf = ({ pgn, sentence, readings, instance, reference, source, to, does }: Setting): string => {
  const isByReading = !['send', 'pass', 'no-echo', 'speed'].includes(does);
  const about = [pgn, sentence, ...(isByReading ? readings : []), instance];
  const more =
    does === 'number' || does === 'offset' || does === 'no-offset' || does === 'no-heading' ? source : undefined;
  return [...about, reference, more, to].filter((part) => part !== undefined).join('-');
};

const idOf = (setting: Setting): string =>
  [setting.does, setting.port ?? setting.kit, whatOf(setting)].filter((part) => part !== '').join(':');

const inOrder = <Value extends string>(all: readonly Value[], values: readonly Value[]): Value[] =>
  all.filter((value) => values.includes(value));

const together = (a: SettingEntry, b: SettingEntry): SettingEntry => ({
  ...a,
  readings: [...a.readings, ...b.readings],
  at: [...a.at, ...b.at],
});

/**
 * What to set in each unit so that every reading arrives from the source that counts: the table to work from aboard. Only what
 * somebody needs is switched on. Pure; sorted by unit, then port, then what is set.
 */
export const settingEntries = (
  reaches: Reaches,
  chosen: readonly ChosenSources[],
  numbers: readonly NumberEntry[],
): SettingEntry[] => {
  const { network } = reaches;
  const all = [
    ...portSettings(network, reliedMessages(network, chosen)),
    ...sourceSettings(reaches, chosen),
    ...turnSettings(network, chosen),
    ...numberSettings(network, numbers),
  ];
  const byId = new Map<string, SettingEntry>();
  for (const setting of all) {
    const entry = { id: idOf(setting), ...setting };
    const known = byId.get(entry.id);
    byId.set(entry.id, known === undefined ? entry : together(known, entry));
  }
  return [...byId.values()]
    .map((entry) => ({
      ...entry,
      readings: inOrder(readingIds, entry.readings),
      at: [...new Set(entry.at)].sort(byCodeUnit),
    }))
    .sort(
      (a, b) =>
        byCodeUnit(a.kit, b.kit) ||
        byCodeUnit(a.port ?? '', b.port ?? '') ||
        order.indexOf(a.does) - order.indexOf(b.does) ||
        byCodeUnit(a.id, b.id),
    );
};
