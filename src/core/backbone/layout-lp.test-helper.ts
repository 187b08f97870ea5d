import type { Problem, ProblemGrade, ProblemWay } from './problem.ts';
import { layGround } from './solver/ground.ts';

/** How it is said that the trunk hangs together: one flow for all tees with a large factor, or a flow for each place with tees. */
export type FlowModel = 'plain' | 'strong';

type Term = readonly [factor: number, name: string];

const sum = (terms: readonly Term[]): string =>
  terms.map(([factor, name]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`).join(' ');

/**
 * The layout problem of one grade within its warn limits as a linear programme with whole variables, in the text form that
 * common solvers read; costs in hundredths. Stated are: one walk, its ends, tees, single drops and all drops, and the length
 * of the trunk. Left out are the farthest pair, currents and volts, so its optimum is a lower bound, and the optimum where
 * these do not bind.
 *
 * u1, u2: the trunk runs once, twice through a way. on: a tee stands at a place. hang: a device has its tee at a place.
 * feed: the feed is there. start: the walk may start there. odd, pairs: parity of the ways at a place.
 */
export const layoutLp = ({
  problem,
  grade,
  model,
}: {
  readonly problem: Problem;
  readonly grade: ProblemGrade;
  readonly model: FlowModel;
}): string => {
  const ways = problem.ways.map((way, number) => ({ ...way, number })).filter(({ trunk }) => trunk > 0);
  const places = problem.places.map((place, number) => ({ ...place, number }));
  const at = (id: string) => ways.filter(({ a, b }) => a === id || b === id);
  const ground = layGround({ problem, grade, stretched: false });
  const hangs = ground.devices.flatMap(({ options }, device) =>
    options
      .filter(({ boughtMm }) => boughtMm <= problem.limits.dropMm)
      .map(({ place, mm, boughtMm }) => ({ device, place, mm, boughtMm })),
  );
  const leads = ground.leads.map(({ place, cost }) => ({ place, cost }));
  const teePlaces = places.filter(({ tees }) => tees);
  const spares = problem.places.reduce((all, place) => all + place.spares, 0);
  const { tee, terminator, feed } = problem.prices;
  const fixed = (problem.devices.length + spares + 1) * tee + 2 * terminator + feed;
  const passes = (factor: (way: ProblemWay) => number): Term[] =>
    ways.flatMap((way): Term[] => [
      [factor(way), `u1_${way.number}`],
      [factor(way), `u2_${way.number}`],
    ]);
  const rows = [
    ...ground.devices.map(
      (_, device) =>
        `${sum(hangs.filter((hang) => hang.device === device).map((hang): Term => [1, hangName(hang)]))} = 1`,
    ),
    ...hangs.map((hang) => `${hangName(hang)} - on_${hang.place} <= 0`),
    `${sum(leads.map(({ place }): Term => [1, `feed_${place}`]))} = 1`,
    ...leads.map(({ place }) => `feed_${place} - on_${place} <= 0`),
    ...ways.map(({ number, trunk }) => (trunk === 2 ? `u2_${number} - u1_${number} <= 0` : `u2_${number} = 0`)),
    ...places.map(({ id, number }) => {
      const degree = passes(() => 1).filter(([, name]) => at(id).some((way) => name.endsWith(`_${way.number}`)));
      return `${sum(degree)} - 2 pairs_${number} - odd_${number} = 0`;
    }),
    ...places.filter(({ end }) => !end).flatMap(({ number }) => [`odd_${number} = 0`, `start_${number} = 0`]),
    `${sum(places.map(({ number }): Term => [1, `odd_${number}`]))} <= 2`,
    `${sum(places.map(({ number }): Term => [1, `start_${number}`]))} = 1`,
    ...teePlaces.map(
      ({ id, number }) =>
        `on_${number} - start_${number} ${sum(at(id).map((way): Term => [-1, `u1_${way.number}`]))} <= 0`,
    ),
    ...places.filter(({ spares: wanted }) => wanted > 0).map(({ number }) => `on_${number} = 1`),
    `${sum(hangs.map((hang): Term => [hang.boughtMm / 1000, hangName(hang)]))} <= ${problem.limits.dropsMm / 1000}`,
    `${sum(passes(({ maxMm }) => maxMm / 1000))} <= ${grade.warnMm / 1000}`,
  ];
  const sinks = teePlaces.map(({ number }) => number);
  const numbered = ways.map(({ a, b, number }) => ({
    number,
    a: places.findIndex(({ id }) => id === a),
    b: places.findIndex(({ id }) => id === b),
  }));
  const flows =
    model === 'plain'
      ? flowRows({ name: 'all', sinks, ways: numbered, places: places.length, most: places.length })
      : sinks.flatMap((sink) =>
          flowRows({ name: `${sink}`, sinks: [sink], ways: numbered, places: places.length, most: 1 }),
        );
  const cost = [
    ...passes(({ mm, extra }) => (mm * grade.trunkPerM) / 1000 + extra),
    ...hangs.map((hang): Term => [(hang.mm * grade.dropPerM) / 1000, hangName(hang)]),
    ...leads.map((lead): Term => [lead.cost / 1000, `feed_${lead.place}`]),
  ];
  const binary = [
    ...ways.flatMap(({ number }) => [`u1_${number}`, `u2_${number}`]),
    ...teePlaces.map(({ number }) => `on_${number}`),
    ...hangs.map(hangName),
    ...leads.map(({ place }) => `feed_${place}`),
    ...places.flatMap(({ number }) => [`odd_${number}`, `start_${number}`]),
  ];
  return [
    'Minimize',
    ` cost: ${sum(cost)} + ${fixed} one`,
    'Subject To',
    ...[...rows, ...flows].map((row, n) => ` r${n}: ${row}`),
    'Bounds',
    ' one = 1',
    'Generals',
    ...places.map(({ number }) => ` pairs_${number}`),
    'Binaries',
    ...binary.map((name) => ` ${name}`),
    'End',
  ].join('\n');
};

const hangName = ({ device, place }: { readonly device: number; readonly place: number }): string =>
  `hang_${device}_${place}`;

/** A flow from the start of the walk to the tees of some places, only through ways the trunk uses. */
const flowRows = ({
  name,
  sinks,
  ways,
  places,
  most,
}: {
  readonly name: string;
  readonly sinks: readonly number[];
  readonly ways: readonly { readonly number: number; readonly a: number; readonly b: number }[];
  readonly places: number;
  readonly most: number;
}): string[] => {
  const forth = (way: number): string => `forth_${name}_${way}`;
  const back = (way: number): string => `back_${name}_${way}`;
  const conserve = Array.from({ length: places }, (_, place) => {
    const terms: Term[] = [[1, `source_${name}_${place}`]];
    for (const { number, a, b } of ways) {
      if (a === place) terms.push([-1, forth(number)], [1, back(number)]);
      if (b === place) terms.push([1, forth(number)], [-1, back(number)]);
    }
    if (sinks.includes(place)) terms.push([-1, `on_${place}`]);
    return `${sum(terms)} = 0`;
  });
  const starts = Array.from({ length: places }, (_, place) => `source_${name}_${place} - ${most} start_${place} <= 0`);
  const through = ways.map(({ number }) => `${forth(number)} + ${back(number)} - ${most} u1_${number} <= 0`);
  return [...conserve, ...starts, ...through];
};
