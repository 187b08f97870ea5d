import type { Failure } from '../blackouts-shape.ts';
import type { FailureModel, Hit } from './effect.ts';

const nothing: Omit<Hit, 'failures'> = { nodes: [], units: [], lines: [], gaps: [], tees: [], shorted: [] };

const hit = (failure: Failure, own: Partial<Omit<Hit, 'failures'>>): Hit => ({
  ...nothing,
  failures: [failure],
  ...own,
});

const supplyHits = ({ wired: { index } }: FailureModel): Hit[] => {
  const { banks, panels, dcdc } = index.boat.supply;
  return [
    ...banks.flatMap(({ id, main }) => {
      const own = { nodes: [`bank:${id}`] };
      const isGuarded = main !== undefined && main.kind !== 'none';
      return [hit({ fails: id, how: 'bank' }, own), ...(isGuarded ? [hit({ fails: id, how: 'main' }, own)] : [])];
    }),
    ...panels.flatMap(({ id, mainA, main, circuits }) => {
      const own = { nodes: [`panel:${id}`] };
      const isGuarded = mainA !== undefined || (main !== undefined && main.kind !== 'none');
      return [
        hit({ fails: id, how: 'panel' }, own),
        hit({ fails: id, how: 'feeder' }, own),
        ...(isGuarded ? [hit({ fails: id, how: 'main' }, own)] : []),
        ...circuits
          .filter(({ feeds }) => feeds.length > 0)
          .map((circuit) =>
            hit({ fails: `${id}.${circuit.id}`, how: 'fuse' }, { nodes: [`circuit:${id}.${circuit.id}`] }),
          ),
      ];
    }),
    ...dcdc.map(({ id }) => hit({ fails: id, how: 'converter' }, { nodes: [`converter:${id}`] })),
  ];
};

const busHits = ({ trunks, dropOfPort, busOf }: FailureModel): Hit[] =>
  [...trunks.values()].flatMap(({ bus, tees, ends }) => {
    const [first, last] = ends.map((place) => `${bus}/end@${place}`);
    const ended = (fails: string | undefined, gap: number): Hit =>
      hit({ fails: fails ?? bus, how: 'terminator' }, { gaps: [{ bus, gap }] });
    return [
      ended(first, 0),
      // both ends at one place
      ended(first === last ? `${last}#2` : last, tees.length),
      ...tees.map((tee, at) => hit({ fails: `${bus}/${tee}`, how: 'tee' }, { tees: [{ bus, at }] })),
      ...tees
        .filter((tee) => busOf.get(tee) === bus)
        .map((port) => hit({ fails: dropOfPort.get(port) ?? `${bus}/${port}`, how: 'short' }, { shorted: [bus] })),
    ];
  });

const wayHits = ({ wired: { index, lines } }: FailureModel): Hit[] => {
  const inWay = new Map<string, string[]>();
  for (const { id, ways } of lines) for (const way of new Set(ways)) inWay.set(way, [...(inWay.get(way) ?? []), id]);
  return [...inWay]
    .filter(([id]) => index.ways.has(id))
    .map(([id, own]) => hit({ fails: id, how: 'way' }, { lines: own }));
};

/** Masts, each with the ways inside it and the places above its foot. */
const mastHits = ({ wired: { index, aboard, lines } }: FailureModel): Hit[] => {
  const left = new Set([...index.ways.values()].filter(({ kind }) => kind === 'mast'));
  const hits: Hit[] = [];
  for (const first of left) {
    const places = new Set<string>(first.ends);
    const own = new Set([first]);
    for (let grew = true; grew; ) {
      grew = false;
      for (const way of left) {
        if (own.has(way) || !way.ends.some((end) => places.has(end))) continue;
        own.add(way);
        for (const end of way.ends) places.add(end);
        grew = true;
      }
    }
    for (const way of own) left.delete(way);
    const zOf = (place: string): number => index.places.get(place)?.zM ?? 0;
    const [foot = ''] = [...places].sort((a, b) => zOf(a) - zOf(b));
    const ways = new Set([...own].map(({ id }) => id));
    const units = [...aboard].filter((kit) => {
      const place = index.kit.get(kit)?.place ?? '';
      return place !== foot && places.has(place);
    });
    const cut = lines.filter((line) => line.ways.some((way) => ways.has(way))).map(({ id }) => id);
    hits.push(hit({ fails: foot, how: 'mast' }, { units, lines: cut }));
  }
  return hits;
};

/** Every single failure of a boat, with what it hits itself. */
export const everyFailure = (model: FailureModel): Hit[] => [
  ...supplyHits(model),
  ...[...model.wired.aboard].map((kit) => hit({ fails: kit, how: 'unit' }, { units: [kit] })),
  ...model.wired.lines.map(({ id }) => hit({ fails: id, how: 'line' }, { lines: [id] })),
  ...busHits(model),
  ...wayHits(model),
  ...mastHits(model),
];

/** Several failures at once, as one. */
export const together = (hits: readonly Hit[]): Hit => ({
  failures: hits.flatMap(({ failures }) => failures),
  nodes: hits.flatMap(({ nodes }) => nodes),
  units: hits.flatMap(({ units }) => units),
  lines: hits.flatMap(({ lines }) => lines),
  gaps: hits.flatMap(({ gaps }) => gaps),
  tees: hits.flatMap(({ tees }) => tees),
  shorted: hits.flatMap(({ shorted }) => shorted),
});
