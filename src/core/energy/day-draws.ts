import { panelNominalV } from '../backbone/panel-volts.ts';
import { panelsUp } from '../backbone/panels-up.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { isAboard } from '../boat/phase.ts';
import type { Sheet } from '../boat/sheet.ts';
import { lenCurrent } from '../facts/bus-limits.ts';
import { supplyDefaults } from '../facts/defaults.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { type Circuits, circuitsByTarget } from '../power/circuits-by-target.ts';
import { unitLoads } from '../power/unit-loads.ts';
import { type FedBank, fedBank } from './fed-bank.ts';
import type { DrawnBy } from './unit-day.ts';

/** What one port of a unit draws, at its bank, and what is known of it. */
export interface DayDraw extends DrawnBy {
  readonly kit: string;
  readonly known: 'sheet' | 'load-number';
  readonly fed?: FedBank | undefined;
}

/** Everything aboard in a phase that draws, and the units of which nobody says how much. */
export interface DrawsAboard {
  readonly draws: readonly DayDraw[];
  readonly unknown: readonly string[];
}

interface Aboard {
  readonly index: BoatIndex;
  readonly circuits: Circuits;
  readonly joins: readonly StandingJoin[];
}

const kindOf = (index: BoatIndex, kit: string): string => index.sheetOf.get(kit)?.kind ?? '';

const atBank = (fed: FedBank | undefined, watts: number): number => watts * (fed?.wattsPerWatt ?? 1);

/** A unit on a bus whose sheet says nothing of power, but has its load number: it draws at most 50 mA for each. */
const lenDraws = ({ index, circuits, joins }: Aboard, kit: string, sheet: Sheet): DayDraw[] =>
  sheet.ports
    .filter(({ protocol, len }) => protocol === 'nmea2000' && len !== undefined)
    .map(({ id, len = 0 }) => {
      const bus = joins.find(({ members }) => members.some((member) => member.kit === kit && member.port === id))?.bus;
      const panel = index.panels.get(circuits.get(bus ?? '')?.panel ?? '');
      const fed = panel === undefined ? undefined : fedBank(index, circuits, panelsUp(index, panel).source);
      const volts = panel === undefined ? supplyDefaults.nominalV.value : panelNominalV(index, panel);
      const watts = atBank(fed, (len * lenCurrent.value * volts) / 1000);
      return { kit, kind: sheet.kind, known: 'load-number', typicalW: watts, mostW: watts, fed };
    });

/** A port by which power comes in. */
const takesPower = ({ protocol, role }: Sheet['ports'][number]): boolean =>
  protocol === 'nmea2000' || (protocol === 'dc' && role !== 'talk');

/** Whether a unit has a feed of its own, or lives on a bus, without a word on what it draws there. */
const isUnknown = (sheet: Sheet, lens: readonly DayDraw[]): boolean => {
  const told = new Set((sheet.power ?? []).map(({ port }) => port));
  const untold = sheet.ports.filter((port) => takesPower(port) && !told.has(port.id));
  if (untold.some(({ protocol }) => protocol === 'dc')) return true;
  return told.size === 0 && untold.length > lens.length;
};

/** What draws in a phase of the refit, from which bank, with the losses of converters on the way. */
export const drawsAboard = (index: BoatIndex, phase: number, joins: readonly StandingJoin[]): DrawsAboard => {
  const aboard = { index, circuits: circuitsByTarget(index), joins };
  const draws: DayDraw[] = unitLoads(index, phase, joins).map(({ kit, from, behaves, nominalV, typicalW, most }) => {
    const fed = fedBank(index, aboard.circuits, from);
    const mostW = behaves === 'power' ? most : most * nominalV;
    return {
      kit,
      kind: kindOf(index, kit),
      known: 'sheet',
      typicalW: atBank(fed, typicalW),
      mostW: atBank(fed, mostW),
      fed,
    };
  });
  const unknown: string[] = [];
  for (const unit of index.boat.kit) {
    const sheet = index.sheetOf.get(unit.id);
    if (sheet === undefined || !isAboard(unit, phase)) continue;
    const lens = (sheet.power ?? []).length > 0 ? [] : lenDraws(aboard, unit.id, sheet);
    draws.push(...lens);
    if (isUnknown(sheet, lens)) unknown.push(unit.id);
  }
  return { draws, unknown };
};
