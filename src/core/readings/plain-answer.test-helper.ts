import type { Boat, Need } from '../boat/boat-schema.ts';
import type { Port, Reference, Sends, Sheet } from '../boat/sheet.ts';

/**
 * A second, plain way to the same answer: try every row of different ports, and see whether it brings the reading to
 * the screen. It has its own table of a few messages and shares nothing with the search it checks.
 */
interface Told {
  form: string;
  instance: number | undefined;
  everyMs: number;
  reference: Reference | 'lost' | undefined;
  offset: boolean | undefined;
  baud: number;
  line: Port['line'];
}
type Meaning = [reading: string, everyMs: number, reference?: Reference | undefined, offset?: boolean];

const meaning: Record<string, Meaning> = {
  DBT: ['depth', 1000, 'transducer', false],
  DPT: ['depth', 1000, undefined, true],
  HDM: ['heading', 100, 'magnetic'],
  HDT: ['heading', 100, 'true'],
  RSA: ['rudder', 1000],
  '128267': ['depth', 1000, undefined, true],
  '127250': ['heading', 100],
  '127245': ['rudder', 100],
};
const formOf = (said: { pgn?: number; sentence?: string }): string => String(said.pgn ?? said.sentence);
const meaningOf = (said: { pgn?: number; sentence?: string }): Meaning => meaning[formOf(said)] ?? ['', 0];
const givers = (port: Port, reading: string): Sends[] =>
  (port.sends ?? []).filter((sent) => meaningOf(sent)[0] === reading);

interface Spot {
  kit: string;
  sheet: Sheet;
  port: Port;
  name: string;
}

const plainWays = (boat: Boat, need: Need): string[][] => {
  const spots: Spot[] = boat.kit.flatMap((unit) =>
    boat.sheets
      .filter((sheet) => sheet.id === unit.sheet)
      .flatMap((sheet) => sheet.ports.map((port) => ({ kit: unit.id, sheet, port, name: `${unit.id}.${port.id}` }))),
  );
  const numberOf = (spot: Spot): number | undefined =>
    boat.kit
      .find((unit) => unit.id === spot.kit)
      ?.instances?.find((entry) => entry.port === spot.port.id && entry.reading === need.reading)?.instance;

  const isJoined = (from: Spot, to: Spot): boolean =>
    boat.joins.some((join) => {
      const has = (spot: Spot, not: string): boolean =>
        boat.joins.some(
          (other) =>
            (other.id === join.id || (join.bus !== undefined && other.bus === join.bus)) &&
            other.members.some(({ kit, port, as }) => kit === spot.kit && port === spot.port.id && as !== not),
        );
      return has(from, 'listen') && has(to, 'talk') && from.port.role !== 'listen' && to.port.role !== 'talk';
    });
  const isInside = (a: Spot, b: Spot): boolean =>
    a.kit === b.kit && [a, b].every(({ port }) => (a.sheet.inLine ?? ['']).includes(port.id));

  const own = (spot: Spot): Told[] => {
    const isCarried = (spot.sheet.turns ?? []).some(
      (turn) => turn.toPort === spot.port.id && turn.carries.some((carry) => carry.reading === need.reading),
    );
    if (isCarried) return [];
    return givers(spot.port, need.reading).map((sent) => {
      const [, everyMs, reference, offset] = meaningOf(sent);
      return {
        form: formOf(sent),
        instance: spot.port.protocol === 'nmea0183' ? undefined : (numberOf(spot) ?? sent.instance),
        everyMs: sent.everyMs ?? everyMs,
        reference,
        offset,
        baud: spot.port.baud ?? 4800,
        line: spot.port.line,
      };
    });
  };

  const listens = (spot: Spot, told: Told): boolean =>
    (spot.port.protocol !== 'nmea0183' || (spot.port.baud ?? 4800) === told.baud) &&
    !(told.line === 'rs232' ? ['differential'] : told.line === 'differential' ? ['rs232'] : []).includes(
      spot.port.line ?? '',
    ) &&
    (spot.port.hears ?? []).some((heard) => formOf(heard) === told.form);

  const turned = (from: Spot, to: Spot, told: Told): Told[] =>
    (from.sheet.turns ?? [])
      .filter((turn) => turn.fromPort === from.port.id && turn.toPort === to.port.id)
      .flatMap((turn) => turn.carries)
      .filter(({ reading, instance }) => reading === need.reading && (instance ?? told.instance) === told.instance)
      .flatMap(({ asInstance, loses = [] }) => {
        const numbers = givers(to.port, need.reading).map((sent) => sent.instance);
        return givers(to.port, need.reading).flatMap((sent): Told[] => {
          const [, usual, reference, offset] = meaningOf(sent);
          let number = asInstance ?? (loses.includes('instance') ? undefined : told.instance);
          if (sent.instance !== undefined && number !== sent.instance) {
            if (number !== undefined && new Set(numbers).size > 1 && numberOf(to) === undefined) return [];
            number = sent.instance;
          }
          if (to.port.protocol === 'nmea0183') number = undefined;
          else if (numberOf(to) !== undefined) number = numberOf(to);
          const isLost = loses.includes('offset');
          let named: Told['reference'] = reference ?? told.reference;
          if (told.reference === 'lost' || loses.includes('reference')) named = 'lost';
          else if (named === undefined && isLost) named = 'transducer';
          return [
            {
              form: formOf(sent),
              instance: number,
              everyMs: Math.max(told.everyMs, sent.everyMs ?? Math.max(usual, loses.includes('rate') ? 1000 : 0)),
              reference: named,
              offset: told.offset === false || offset === false || isLost ? false : (offset ?? told.offset),
              baud: to.port.baud ?? 4800,
              line: to.port.line,
            },
          ];
        });
      });

  const suits = (told: Told): boolean =>
    (need.instance === undefined || need.instance === told.instance) &&
    (need.reference === undefined || told.reference === undefined || told.reference === need.reference) &&
    !(need.withOffset === true && told.offset === false) &&
    told.everyMs <= (need.everyMs ?? Number.POSITIVE_INFINITY);

  const found: string[][] = [];
  const walk = (row: Spot[], told: Told, isOut: boolean): void => {
    const last = row.at(-1);
    if (last === undefined) return;
    const isThere = !isOut && last.kit === need.at && row[0]?.kit !== need.at && listens(last, told);
    if (isThere && suits(told)) found.push(row.map(({ name }) => name));
    for (const to of spots) {
      if (row.includes(to)) continue;
      if (isOut && isJoined(last, to)) walk([...row, to], told, false);
      if (isInside(last, to)) {
        walk([...row, to], told, true);
        if (!isOut) walk([...row, to], told, false);
      }
      if (!isOut && last.kit === to.kit && listens(last, told))
        for (const next of turned(last, to, told)) walk([...row, to], next, true);
    }
  };
  for (const spot of spots)
    for (const told of own(spot)) {
      if (spot.kit === need.at && suits(told)) found.push([spot.name]);
      walk([spot], told, true);
    }
  return found;
};

/** The way and the backups that trying everything finds for one need. Units' own numbers must be in the sheets. */
export const plainAnswer = (boat: Boat, need: Need): { by: string[]; backups: string[][] } => {
  const ways = plainWays(boat, need).sort((a, b) => a.length - b.length || (a.join(' ') < b.join(' ') ? -1 : 1));
  const unitsOf = (way: string[]): string[] => way.map((port) => port.split('.')[0] ?? '');
  const [by = []] = ways;
  const used = unitsOf(by).filter((unit) => unit !== need.at);
  const seen = new Set<string | undefined>([unitsOf(by)[0]]);
  const backups = ways.filter((way) => {
    const units = unitsOf(way);
    if (seen.has(units[0]) || units.some((unit) => used.includes(unit))) return false;
    seen.add(units[0]);
    return true;
  });
  return { by, backups };
};
