import type { BoatProblem } from '../boat-problem.ts';
import type { FilePath } from '../place-in-file.ts';
import type { Port, Sheet } from '../sheet.ts';

const readingOnly: ReadonlySet<Port['protocol']> = new Set(['analog', 'coax', 'engine-can', 'video', 'audio']);
const mayPower: ReadonlySet<Port['protocol']> = new Set(['dc', 'nmea2000', 'single-wire', 'analog', 'ethernet']);

const twice = (list: readonly { readonly id: string }[], what: string, path: FilePath): BoatProblem[] => {
  const seen = new Set<string>();
  return list.flatMap((entry, at) => {
    if (!seen.has(entry.id)) {
      seen.add(entry.id);
      return [];
    }
    const says = `Two ${what}s of this sheet have the id "${entry.id}".`;
    return [{ path: [...path, at, 'id'], says, whatToDo: 'Give one of them another id.' }];
  });
};

/** One mention of a port in a sheet. */
interface Mention {
  readonly port: string;
  readonly path: FilePath;
}

const mentionsIn = (sheet: Sheet, path: FilePath): Mention[] => [
  ...sheet.plugs.flatMap((plug, plugAt) =>
    (plug.conductors ?? []).flatMap((conductor, at) =>
      conductor.ports.map((port, portAt) => ({
        port,
        path: [...path, 'plugs', plugAt, 'conductors', at, 'ports', portAt],
      })),
    ),
  ),
  ...(sheet.together ?? []).flatMap((group, groupAt) =>
    group.map((port, at) => ({ port, path: [...path, 'together', groupAt, at] })),
  ),
  ...(sheet.turns ?? []).flatMap((turn, at) => [
    { port: turn.fromPort, path: [...path, 'turns', at, 'fromPort'] },
    { port: turn.toPort, path: [...path, 'turns', at, 'toPort'] },
  ]),
  ...(sheet.inLine ?? []).map((port, at) => ({ port, path: [...path, 'inLine', at] })),
  ...(sheet.power ?? []).map((power, at) => ({ port: power.port, path: [...path, 'power', at, 'port'] })),
  ...(sheet.sensor?.signals ?? []).map(({ port }, at) => ({ port, path: [...path, 'sensor', 'signals', at, 'port'] })),
  ...(sheet.driveOutput === undefined
    ? []
    : [{ port: sheet.driveOutput.port, path: [...path, 'driveOutput', 'port'] }]),
];

const unknownPorts = (sheet: Sheet, path: FilePath): BoatProblem[] => {
  const ports = new Set(sheet.ports.map((port) => port.id));
  return mentionsIn(sheet, path)
    .filter((mention) => !ports.has(mention.port))
    .map((mention) => ({
      path: mention.path,
      says: `The sheet "${sheet.id}" has no port "${mention.port}".`,
      near: { given: mention.port, known: ports },
      whatToDo: 'Name a port of this sheet, or add the port.',
    }));
};

const checkPlugOf = (port: Port, sheet: Sheet, path: FilePath): BoatProblem[] => {
  if (port.onPlug === undefined) {
    if (port.protocol === 'wifi') return [];
    const says = `The port "${port.id}" is on no plug; only a wifi port may be.`;
    return [{ path, says, whatToDo: 'Say in onPlug which plug of the sheet it is on.' }];
  }
  const plugs = sheet.plugs.map((plug) => plug.id);
  if (plugs.includes(port.onPlug)) return [];
  return [
    {
      path: [...path, 'onPlug'],
      says: `The sheet "${sheet.id}" has no plug "${port.onPlug}".`,
      near: { given: port.onPlug, known: plugs },
      whatToDo: 'Name a plug of this sheet, or add the plug.',
    },
  ];
};

const checkMessages = (port: Port, path: FilePath): BoatProblem[] => {
  if (!readingOnly.has(port.protocol)) return [];
  return (['sends', 'hears'] as const).flatMap((side) =>
    (port[side] ?? []).flatMap((entry, at) =>
      entry.reading === undefined
        ? [
            {
              path: [...path, side, at],
              says: `The ${port.protocol} port "${port.id}" carries readings only, no PGN and no sentence.`,
              whatToDo: 'Give the reading it stands for, for example "depth".',
            },
          ]
        : [],
    ),
  );
};

const checkDirection = (port: Port, path: FilePath): BoatProblem[] => {
  const oneWay = port.line === 'single-ended' || port.line === 'rs232';
  if (port.protocol !== 'nmea0183' || !oneWay || port.role !== 'both') return [];
  return [
    {
      path: [...path, 'role'],
      says: `The NMEA 0183 port "${port.id}" is ${port.line} and cannot go both ways; each of its wires has one direction.`,
      whatToDo: 'Make two ports of it, one with role talk and one with role listen.',
    },
  ];
};

const checkPower = (power: NonNullable<Sheet['power']>[number], sheet: Sheet, path: FilePath): BoatProblem[] => {
  const problems: BoatProblem[] = [];
  const port = sheet.ports.find((entry) => entry.id === power.port);
  if (port !== undefined && !mayPower.has(port.protocol)) {
    problems.push({
      path: [...path, 'port'],
      says: `No unit takes its power from ${port.protocol}, and the port "${power.port}" is that.`,
      whatToDo: `Name a port of one of these kinds: ${[...mayPower].join(', ')}.`,
    });
  }
  if (power.typical > power.max) {
    const says = `The typical ${power.typical} ${power.unit} is more than the most, ${power.max} ${power.unit}.`;
    problems.push({ path: [...path, 'typical'], says, whatToDo: 'Look both up in the manual again.' });
  }
  if (power.minV > power.maxV) {
    const says = `The least voltage, ${power.minV} V, is above the highest, ${power.maxV} V.`;
    problems.push({ path: [...path, 'minV'], says, whatToDo: 'Look both up in the manual again.' });
  }
  return problems;
};

const inOrder = (least: number, most: number, unit: string, path: FilePath): BoatProblem[] =>
  least <= most
    ? []
    : [
        {
          path,
          says: `The least, ${least} ${unit}, is above the most, ${most} ${unit}.`,
          whatToDo: 'Look both up in the manual again.',
        },
      ];

const checkSignals = ({ sensor }: Sheet, path: FilePath): BoatProblem[] =>
  (sensor?.signals ?? []).flatMap(({ feed, pulses }, at) => {
    const own = [...path, 'sensor', 'signals', at];
    return [
      ...(feed === undefined ? [] : inOrder(feed.leastV, feed.mostV, 'V', [...own, 'feed', 'leastV'])),
      ...(pulses === undefined ? [] : inOrder(pulses.least, pulses.most, 'Hz per knot', [...own, 'pulses', 'least'])),
    ];
  });

/** What is wrong inside one sheet: ids given twice, ports and plugs that are not there, ports that cannot be as written. */
export const checkSheet = (sheet: Sheet, path: FilePath): BoatProblem[] => [
  ...twice(sheet.plugs, 'plug', [...path, 'plugs']),
  ...twice(sheet.ports, 'port', [...path, 'ports']),
  ...sheet.ports.flatMap((port, at) => {
    const own = [...path, 'ports', at];
    return [...checkPlugOf(port, sheet, own), ...checkMessages(port, own), ...checkDirection(port, own)];
  }),
  ...unknownPorts(sheet, path),
  ...checkSignals(sheet, path),
  ...(sheet.power ?? []).flatMap((power, at) => checkPower(power, sheet, [...path, 'power', at])),
];
