import type { Job, JobStart, PhaseWork } from '../../core/work-shape.ts';
import { pathShape } from '../drawing/marks.ts';
import { polyline } from '../drawing/polyline.ts';
import type { GroupShape, Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { type Bead, beadTiers } from './bead-tiers.ts';
import { clockWords, dayOfPhase, hoursWords } from './day-words.ts';
import { briefKind, jobWords } from './job-words.ts';
import type { DrawnWork } from './picture-input.ts';
import type { WorkNames } from './work-names.ts';
import { workSizes } from './work-sizes.ts';

const { balloonMm, tierMm, underMm, handGapMm, smallMm } = workSizes;
const mostTiers = 5;

/** A job as one person does it. */
interface Stretch {
  readonly phase: PhaseWork;
  readonly job: Job;
  readonly start: JobStart;
  readonly fromMm: number;
  readonly toMm: number;
}

/** One line of the picture: what one person does, or what is only waited for. */
export interface Rope {
  readonly id: string;
  readonly name: string;
  readonly shapes: readonly Shape[];
  readonly heightMm: number;
  /** where the line itself runs, from the top of its row */
  readonly lineMm: number;
}

const stretchesOf = ({ phases, axis }: DrawnWork, isOf: (start: JobStart) => boolean): Stretch[] =>
  phases.flatMap((phase) => {
    const jobs = new Map(phase.jobs.map((job) => [job.id, job]));
    return (phase.order?.starts ?? []).flatMap((start): Stretch[] => {
      const job = jobs.get(start.job);
      // a day of another strip of the picture
      if (job === undefined || !isOf(start) || !axis.holds(phase.phase, start.day, start.lastDay)) return [];
      const fromMm = axis.xOf({ phase: phase.phase, day: start.day, slot: start.slot });
      const toMm = axis.xOf({ phase: phase.phase, day: start.lastDay, slot: start.lastSlot });
      return [{ phase, job, start, fromMm, toMm }];
    });
  });

/** What a job is called where it is read aloud or pointed at. */
const labelOf = ({ names, numbers, done }: DrawnWork, { phase, job, start }: Stretch): string => {
  const hands = start.hands.map((id) => phase.hands.find((hand) => hand.id === id)?.name ?? id);
  const from = `${dayOfPhase(phase, start.day)} ${clockWords(phase.from, start.slot)}`;
  return [
    `${numbers.get(job.id) ?? ''}. ${jobWords(names, job)}`,
    from,
    ...(start.hands.length === 0 ? [] : [hoursWords(job.slots / 2), hands.join(' and ')]),
    ...(job.day === undefined ? [] : ['held to its day']),
    ...(done.has(job.id) ? ['done'] : []),
  ].join(', ');
};

const numberBalloon = (number: number, xMm: number, yMm: number, isDone: boolean): Shape[] => [
  {
    kind: 'circle',
    xMm,
    yMm,
    radiusMm: balloonMm,
    stroke: { ink: 'ink', widthMm: 0.28 },
    fill: isDone ? 'ink' : 'paper',
  },
  {
    kind: 'text',
    xMm,
    yMm: yMm + 0.98,
    text: String(number),
    sizeMm: number > 99 ? 2.3 : 2.92,
    face: 'words',
    weight: 'semibold',
    anchor: 'middle',
    ink: isDone ? 'paper' : 'ink',
  },
];

/** The rope as it is served: thick where the person works, with a whipping at both ends. */
const served = ({ fromMm, toMm }: Stretch, lineMm: number): Shape[] => {
  const [left, right] = [fromMm + 0.2, Math.max(toMm - 0.2, fromMm + 0.7)];
  const whipping = (xMm: number): Shape =>
    pathShape(
      polyline([
        [xMm, lineMm - 1.25],
        [xMm, lineMm + 1.25],
      ]),
      { stroke: { ink: 'ink', widthMm: 0.3 } },
    );
  return [
    pathShape(
      polyline([
        [left, lineMm],
        [right, lineMm],
      ]),
      { stroke: { ink: 'data', widthMm: 1.5 } },
    ),
    whipping(left),
    whipping(right),
  ];
};

const clockSlots = 48;

/** Points under the rope as long as what was sealed or sent in only takes its time. */
const waitTrail = ({ axis }: DrawnWork, { phase, job, start, toMm }: Stretch, lineMm: number): Shape[] => {
  if (job.waitH === undefined || job.waitH <= 0) return [];
  const end = start.lastDay * clockSlots + phase.from + start.lastSlot + 2 * job.waitH;
  const day = Math.floor(end / clockSlots);
  const untilMm = axis.xOf({ phase: phase.phase, day, slot: Math.max(0, end - day * clockSlots - phase.from) });
  if (untilMm <= toMm) return [];
  const yMm = lineMm + 1.9;
  return [
    pathShape(
      polyline([
        [toMm, yMm],
        [untilMm, yMm],
      ]),
      { stroke: { ink: 'ink', widthMm: 0.35, dashMm: [0.35, 0.9] } },
    ),
  ];
};

/** A nail through the rope: the job is held to its day. */
const nail = ({ fromMm }: Stretch, lineMm: number): Shape[] => [
  pathShape(
    polyline([
      [fromMm + 0.2, lineMm - 2.6],
      [fromMm + 0.2, lineMm + 2.6],
    ]),
    { stroke: { ink: 'accent', widthMm: 0.5 } },
  ),
  { kind: 'circle', xMm: fromMm + 0.2, yMm: lineMm + 2.6, radiusMm: 0.75, fill: 'accent' },
];

const stretchGroup = (
  work: DrawnWork,
  { stretch, xMm, yMm, lineMm }: { stretch: Stretch; xMm: number; yMm: number; lineMm: number },
): GroupShape => {
  const { job } = stretch;
  const isDone = work.done.has(job.id);
  const lead = pathShape(
    polyline([
      [xMm, yMm + balloonMm],
      [xMm, lineMm],
    ]),
    { stroke: { ink: 'quiet', widthMm: 0.15 } },
  );
  return {
    kind: 'group',
    about: [job.id],
    label: labelOf(work, stretch),
    focusable: true,
    shapes: [
      lead,
      ...(stretch.toMm > stretch.fromMm ? served(stretch, lineMm) : []),
      ...waitTrail(work, stretch, lineMm),
      ...(job.day === undefined ? [] : nail(stretch, lineMm)),
      ...numberBalloon(work.numbers.get(job.id) ?? 0, xMm, yMm, isDone),
    ],
  };
};

/** Words under the rope where a job lasts long enough to hold them: all of its name, else its kind. */
const underWords = (names: WorkNames, stretches: readonly Stretch[], lineMm: number): Shape[] => {
  const style = { sizeMm: smallMm, face: 'words' } as const;
  return stretches.flatMap(({ job, fromMm, toMm }): Shape[] => {
    const text = [jobWords(names, job), briefKind[job.kind]].find(
      (words) => textWidthMm(words, style) <= toMm - fromMm - 0.4,
    );
    if (text === undefined) return [];
    return [{ kind: 'text', text, xMm: fromMm + 0.4, yMm: lineMm + 4.1, ...style, ink: 'quiet', about: [job.id] }];
  });
};

/** Balloons over the beginning of what they number, none over the edges of the picture. */
const beadsOf = ({ axis }: DrawnWork, stretches: readonly Stretch[]): Bead<Stretch>[] =>
  stretches.map((stretch) => {
    const left = Math.max(stretch.fromMm, balloonMm);
    const middleMm = Math.min(
      left + 0.2 + Math.min(balloonMm, Math.max(0, stretch.toMm - left) / 2),
      axis.widthMm - balloonMm,
    );
    return { of: stretch, fromMm: middleMm - balloonMm, toMm: middleMm + balloonMm };
  });

interface RopeOf {
  readonly id: string;
  readonly name: string;
  readonly beads: readonly Bead<Stretch>[];
  /** those whose kind is written under the rope where there is room */
  readonly stretches: readonly Stretch[];
}

const ropeOf = (work: DrawnWork, { id, name, beads, stretches }: RopeOf): Rope => {
  const laid = beadTiers(beads, { gapMm: 0.5, most: mostTiers });
  const tiers = Math.max(1, ...laid.map(({ tier }) => tier + 1));
  const lineMm = tiers * tierMm + 1.4;
  const rope = pathShape(
    polyline([
      [0, lineMm],
      [work.axis.widthMm, lineMm],
    ]),
    { stroke: { ink: 'quiet', widthMm: 0.25 } },
  );
  const groups = laid.map(({ bead, tier }) =>
    stretchGroup(work, {
      stretch: bead.of,
      xMm: (bead.fromMm + bead.toMm) / 2,
      yMm: lineMm - 1.6 - balloonMm - tier * tierMm,
      lineMm,
    }),
  );
  return {
    id,
    name,
    lineMm,
    heightMm: lineMm + underMm + handGapMm,
    shapes: [rope, ...groups, ...underWords(work.names, stretches, lineMm)],
  };
};

/** Jobs that are done stand on their day one beside the other: nobody wrote down at what hour. */
const doneBeads = (work: DrawnWork, stretches: readonly Stretch[]): Bead<Stretch>[] => {
  const counts = new Map<number, number>();
  const stepMm = 2 * balloonMm + 0.5;
  return stretches.map((stretch) => {
    const column = work.axis.columns.find(
      ({ leftMm, rightMm }) => leftMm <= stretch.fromMm && stretch.fromMm < rightMm,
    );
    const leftMm = column?.leftMm ?? stretch.fromMm;
    const across = Math.max(1, Math.floor(((column?.nightMm ?? leftMm) - leftMm) / stepMm));
    const count = counts.get(leftMm) ?? 0;
    counts.set(leftMm, count + 1);
    const fromMm = leftMm + 0.4 + (count % across) * stepMm;
    return { of: { ...stretch, fromMm, toMm: fromMm }, fromMm, toMm: fromMm + 2 * balloonMm };
  });
};

const isDone = ({ done }: DrawnWork, { hands, job }: JobStart): boolean => hands.length === 0 && done.has(job);

/** What each person does, a line each, as a rope with the jobs on it; then what only takes its time, and what is done. */
export const handRopes = (work: DrawnWork): Rope[] => {
  const hands = new Map(work.phases.flatMap((phase) => phase.hands.map(({ id, name }) => [id, name] as const)));
  const rope = (id: string, name: string, stretches: readonly Stretch[]): Rope =>
    ropeOf(work, { id, name, beads: beadsOf(work, stretches), stretches });
  const waited = stretchesOf(work, (start) => start.hands.length === 0 && !isDone(work, start));
  const done = stretchesOf(work, (start) => isDone(work, start));
  return [
    ...[...hands].map(([id, name]) =>
      rope(
        id,
        name,
        stretchesOf(work, ({ hands: own }) => own.includes(id)),
      ),
    ),
    ...(waited.length === 0 ? [] : [rope('waited', 'waited for', waited)]),
    ...(done.length === 0
      ? []
      : [ropeOf(work, { id: 'done', name: 'done', beads: doneBeads(work, done), stretches: [] })]),
  ];
};
