import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { readBoat } from '../../boat/read-boat.ts';
import type { Work } from '../../boat/work.ts';
import { cautions } from '../../facts/cautions.ts';
import { isOutsideQuote } from '../../facts/job-figures.ts';
import { jobShares } from '../../facts/job-shares.ts';
import { jobSteps } from '../../facts/job-steps.ts';
import { quoteTasks } from '../../facts/quote-figures.ts';
import { jobTools } from '../../facts/tools-of-jobs.ts';
import { seaTrials } from '../../facts/trial-tests.ts';
import { wiredBoat } from '../../joins/wired-boat.ts';
import { nearPlan } from '../../plan.ts';
import { hourLines, sumOfHours } from '../../quote/hour-lines.ts';
import { partsOf } from '../../quote/quote-of.ts';
import { workToDo } from '../../quote/work-to-do.ts';
import { type Job, jobSchema } from '../../work-shape.ts';
import { jobsOf } from './jobs-of.ts';
import { leavingOf } from './leaving-of.ts';
import { sharedOut } from './shared-out.ts';
import { watchedOf } from './watched-of.ts';

const example = (id: string): Boat =>
  readBoat(readFileSync(new URL(`../../../../examples/${id}/${id}.boat.json`, import.meta.url), 'utf8'));

const inputOf = (boat: Boat) => ({ index: indexBoat(wiredBoat(boat).boat), plan: nearPlan(boat, new Map()) });

const gannet = { ...example('gannet'), work: {} };
const planned = inputOf(gannet);
const jobs = jobsOf(planned);
const byId = new Map(jobs.map((job) => [job.id, job]));
const waitedBy = (id: string): string[] => byId.get(id)?.after.map(({ job }) => job) ?? [];
/** The same plan with other things said of the work. */
const withWork = (work: Work): Job[] =>
  jobsOf({ ...planned, index: { ...planned.index, boat: { ...planned.index.boat, work } } });

/** All jobs that some wait for, by however many steps. */
const allBefore = (all: readonly Job[], id: string): ReadonlySet<string> => {
  const seen = new Set<string>();
  const open = [id];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    for (const { job } of all.find((one) => one.id === next)?.after ?? []) {
      if (!seen.has(job)) open.push(job);
      seen.add(job);
    }
  }
  return seen;
};

/** Sum over jobs of what the quote counts, hundredths of an hour. */
const quoted = (all: readonly Job[], end: 'least' | 'most'): number =>
  all.filter(({ kind }) => !isOutsideQuote(kind)).reduce((sum, { hoursH }) => sum + Math.round(hoursH[end] * 100), 0);

describe('the hours of all jobs together', () => {
  test.each(['gannet', 'sandpiper', 'bonxie'])('are those of the quote of %s', (id) => {
    const input = id === 'gannet' ? planned : inputOf(example(id));
    const own = { ...input, index: { ...input.index, boat: { ...input.index.boat, work: {} } } };
    const { least, most } = sumOfHours(
      hourLines(workToDo(input.index, input.plan, partsOf(input.plan)), input.index.boat.quote ?? {}, 0),
    );
    const all = jobsOf(own);
    expect([quoted(all, 'least'), quoted(all, 'most')]).toEqual([Math.round(least * 100), Math.round(most * 100)]);
    for (const job of all) expect([job.id, jobSchema.safeParse(job).success]).toEqual([job.id, true]);
  });

  test('are those of any quote, whoever does the work and whatever hours are set', () => {
    const terms = fc.record(
      {
        by: fc.constantFrom('owner' as const, 'professional' as const),
        mast: fc.constantFrom('up' as const, 'down' as const),
        hours: fc.uniqueArray(
          fc.record({
            task: fc.constantFrom(...quoteTasks),
            eachH: fc.integer({ min: 0, max: 999 }).map((hundredths) => hundredths / 100),
            reason: fc.constant('So.'),
          }),
          { selector: ({ task }) => task, maxLength: 4 },
        ),
      },
      { requiredKeys: [] },
    );
    const tern = aBoat().boat;
    const { index, plan } = inputOf(tern);
    fc.assert(
      fc.property(terms, (quote) => {
        const own = { plan, index: { ...index, boat: { ...index.boat, quote } } };
        const { least, most } = sumOfHours(hourLines(workToDo(own.index, plan, partsOf(plan)), quote, 0));
        const all = jobsOf(own);
        expect([quoted(all, 'least') / 100, quoted(all, 'most') / 100]).toEqual([least, most]);
      }),
      { numRuns: 20 },
    );
  });

  test('every task is shared out whole, by shares that come to a hundred', () => {
    for (const task of quoteTasks) {
      const shares = Object.values(jobShares.byTask[task]);
      expect([task, shares.reduce((sum, share) => sum + share, 0)]).toEqual([task, 100]);
    }
  });

  test('what is shared out adds up, and nobody gets more than one over an exact share', () => {
    const weights = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(fc.nat({ max: 100_000 }), weights, (whole, list) => {
        const parts = sharedOut(whole, list);
        const sum = list.reduce((all, weight) => all + weight, 0);
        expect(parts.reduce((all, part) => all + part, 0)).toBe(whole);
        if (sum > 0) {
          parts.forEach((part, at) => {
            expect(Math.abs(part - (whole * (list[at] ?? 0)) / sum)).toBeLessThan(1 + 1e-6);
          });
        }
      }),
    );
  });
});

describe('the jobs of Gannet', () => {
  test('are as many as a good list has, each once, none waiting for itself', () => {
    expect(jobs.length).toBeGreaterThan(60);
    expect(jobs.length).toBeLessThanOrEqual(120);
    expect(byId.size).toBe(jobs.length);
    for (const { id } of jobs) expect([id, allBefore(jobs, id).has(id)]).toEqual([id, false]);
    for (const job of jobs)
      for (const { job: other } of job.after) expect([job.id, byId.has(other)]).toEqual([job.id, true]);
  });

  test('name steps, tools and cautions that facts have', () => {
    const steps = new Set<string>([...Object.keys(jobSteps.says), ...seaTrials.map(({ id }) => id)]);
    const known = new Set(cautions.map(({ id }) => id));
    for (const job of jobs) {
      expect(job.steps.filter((step) => !steps.has(step))).toEqual([]);
      expect(job.tools.filter((tool) => !Object.hasOwn(jobTools.says, tool))).toEqual([]);
      expect(job.cautions.filter((caution) => !known.has(caution))).toEqual([]);
      expect(job.slots).toBeGreaterThanOrEqual(1);
    }
  });

  test('touch nothing before she was looked at and photographed (fitting, practice: survey first)', () => {
    const waitsForSurvey = (id: string): boolean =>
      waitedBy(id).some((before) => before === 'survey' || waitsForSurvey(before));
    const early = jobs.filter(({ id, kind }) => kind !== 'paper' && id !== 'survey' && !waitsForSurvey(id));
    expect(early.map(({ id }) => id)).toEqual([]);
  });

  test('label before anything is unplugged, and have the old set read before it goes (fitting, practice)', () => {
    expect(waitedBy('take-out:old-plotter')).toEqual(expect.arrayContaining(['label', 'save-settings']));
    expect(waitedBy('label')).toContain('survey');
  });

  test('draw the old radar cable out of the pipe to the tower before the new ones go in', () => {
    expect(byId.get('pull:g18')?.after).toContainEqual({ job: 'take-out:old-radar', why: 'bore-full' });
    expect(byId.get('pull:g18')?.steps[0]).toBe('draw-the-old-cable-first');
  });

  test('plug the radar in when its gland has cured, a day after it was sealed', () => {
    expect(byId.get('connect:radar')?.after).toContainEqual({ job: 'seal:g16', why: 'cured-first', waitH: 24 });
  });

  test('work below the waterline ashore only, launch when it has cured, and watch for a day', () => {
    expect(byId.get('underwater:transducer')?.state).toBe('ashore');
    expect(byId.get('launch')?.after).toEqual([{ job: 'underwater:transducer', why: 'cured-first', waitH: 48 }]);
    expect(byId.get('watch-for-water')?.after).toEqual([{ job: 'launch', why: 'tried-first', waitH: 24 }]);
    expect(waitedBy('sea-trial')).toContain('watch-for-water');
  });

  test('feed the pumps meanwhile, before any panel is opened and until all are shut', () => {
    const panels = jobs.filter(({ kind }) => kind === 'panel').map(({ id }) => id);
    expect(panels).toHaveLength(3);
    for (const id of panels) expect(waitedBy(id)).toContain('temporary-feed');
    expect(waitedBy('take-temporary-feed-out')).toEqual(expect.arrayContaining(panels));
  });

  test('switch on in slices: power, backbone, then the others; nothing is tried at sea before the dock', () => {
    for (const slice of ['sensors', 'radio', 'displays:fly-dash', 'displays:helm-dash']) {
      expect(waitedBy(`power-up:${slice}`)).toEqual(expect.arrayContaining(['power-up:power', 'power-up:backbone']));
    }
    expect(waitedBy('power-up:radar')).toContain('power-up:displays:helm-dash');
    const docks = jobs.filter(({ kind }) => kind === 'dock-test' || kind === 'update' || kind === 'drive-check');
    const seen = allBefore(jobs, 'sea-trial:heading');
    expect(docks.filter(({ id }) => !seen.has(id)).map(({ id }) => id)).toEqual([]);
    expect(waitedBy('sea-trial:radar')).toContain('sea-trial:heading');
    expect(allBefore(jobs, 'as-built').has('sea-trial')).toBe(true);
  });

  test('take every test of the dock once', () => {
    const taken = jobs.filter(({ kind }) => kind === 'dock-test').flatMap(({ about }) => about);
    expect(taken.toSorted()).toEqual(planned.plan.tests.map(({ id }) => id).toSorted());
  });

  test('hand out what is bought, no more of anything than is', () => {
    const used = new Map<string, number>();
    for (const { item, count } of jobs.flatMap(({ materials }) => materials)) {
      used.set(item, (used.get(item) ?? 0) + count);
    }
    for (const { id, count, kind } of planned.plan.shopping) {
      if (kind === 'label' || kind === 'spare') continue;
      expect([id, used.get(id)?.toFixed(2)]).toEqual([id, count.toFixed(2)]);
    }
  });
});

describe('whatever stays, comes and goes, and in which phase', () => {
  const { boat: tern } = aBoat();
  const fates = fc.array(
    fc.record({
      fate: fc.constantFrom('stays' as const, 'comes' as const, 'goes' as const),
      phase: fc.constantFrom(1, 2, 3),
    }),
    { minLength: tern.kit.length, maxLength: tern.kit.length },
  );
  const terms = fc.constantFrom({}, { quote: { mast: 'down' as const } });

  test('jobs wait in no circle and for jobs of their phase, and take the hours of the quote', () => {
    fc.assert(
      fc.property(fates, terms, (drawn, more) => {
        const kit = tern.kit.map((unit, at) => ({ ...unit, ...drawn[at] }));
        const input = inputOf({ ...tern, ...more, kit });
        const all = jobsOf(input);
        const known = new Map(all.map((job) => [job.id, job]));
        expect(known.size).toBe(all.length);
        for (const { id, after, phase } of all) {
          expect([id, allBefore(all, id).has(id)]).toEqual([id, false]);
          expect(after.filter(({ job }) => known.get(job)?.phase !== phase)).toEqual([]);
        }
        for (const list of watchedOf({ ...input, jobs: all }).values()) {
          const named = list.flatMap(({ ways }) => ways.flatMap(({ from, until }) => [...from, ...until]));
          expect(named.filter((id) => !known.has(id))).toEqual([]);
        }
        const { least, most } = sumOfHours(
          hourLines(workToDo(input.index, input.plan, partsOf(input.plan)), input.index.boat.quote ?? {}, 0),
        );
        expect([quoted(all, 'least') / 100, quoted(all, 'most') / 100]).toEqual([least, most]);
        expect(leavingOf({ ...input, jobs: all }).filter(({ after }) => !known.has(after))).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });
});

describe('what a person says of the work', () => {
  test('stands before what is usual', () => {
    const said = withWork({
      hands: [{ id: 'anna', name: 'Anna', is: 'owner' }],
      jobs: [
        { job: 'mount:radar', hoursH: 6, hand: 'anna', day: '2027-04-02', after: ['label'] },
        { job: 'cut:mate-dash', leftOut: 'It becomes a chart pocket.' },
      ],
      own: [{ id: 'paint', name: 'Paint the dash', hoursH: 3, after: ['cut:helm-dash'], takes: ['depth'] }],
    });
    const radar = said.find(({ id }) => id === 'mount:radar');
    expect(radar).toMatchObject({ hoursH: { least: 6, most: 6 }, slots: 12, hand: 'anna', day: '2027-04-02' });
    expect(radar?.after).toContainEqual({ job: 'label', why: 'person' });
    expect(said.find(({ id }) => id === 'cut:mate-dash')?.leftOut).toBe('It becomes a chart pocket.');
    expect(said.find(({ id }) => id === 'own:paint')).toMatchObject({
      name: 'Paint the dash',
      slots: 6,
      takes: ['depth'],
    });
  });

  test('says what a pump hangs on: on the battery itself it needs no feed of its own', () => {
    const said = withWork({
      essentials: [
        { function: 'bilge-pump', on: ['start'] },
        { function: 'high-water-alarm', none: true },
      ],
    });
    expect(said.some(({ kind }) => kind === 'temporary-feed')).toBe(false);
  });
});

describe('the essential functions', () => {
  const functions = watchedOf({ ...planned, jobs }).get(1) ?? [];
  const waysOf = (wanted: string) => functions.find((one) => one.function === wanted)?.ways ?? [];

  test('are unknown where nobody said what they hang on, and pumps may never be dark', () => {
    expect(functions.filter(({ hard }) => hard).map((one) => one.function)).toEqual(['bilge-pump', 'high-water-alarm']);
    expect(functions.filter(({ unknown }) => unknown === true)).toHaveLength(9);
    expect(waysOf('bilge-pump')).toContainEqual({
      by: ['temporary-feed'],
      from: ['temporary-feed'],
      until: ['take-temporary-feed-out'],
    });
  });

  test('have depth by the old sounder until it comes out, and by the new way from its power-up', () => {
    const old = waysOf('depth').filter(({ by }) => by.includes('old-sounder'));
    expect(old.length).toBeGreaterThan(0);
    for (const { until } of old) expect(until).toContain('take-out:old-sounder');
    const fresh = waysOf('depth').filter(({ by }) => by.includes('depth-bus'));
    expect(fresh.length).toBeGreaterThan(0);
    for (const { from, by } of fresh) {
      expect(by).not.toContain('old-sounder');
      expect(from).toContain('power-up:sensors');
    }
  });

  test('do not count a handheld as a way', () => {
    expect(waysOf('vhf').flatMap(({ by }) => by)).not.toContain('handheld');
  });

  test('name only jobs that there are', () => {
    for (const { ways } of functions) {
      for (const { from, until } of ways) for (const id of [...from, ...until]) expect(byId.has(id)).toBe(true);
    }
  });

  test('are dark while a job of the person’s own takes them', () => {
    const own = withWork({ own: [{ id: 'lift', name: 'Lift the pump', hoursH: 2, takes: ['steering'] }] });
    const input = { ...planned, jobs: own };
    const steering =
      watchedOf(input)
        .get(1)
        ?.find((one) => one.function === 'steering')?.ways ?? [];
    expect(steering.length).toBeGreaterThan(0);
    for (const { from, until } of steering) expect([...from, ...until]).toContain('own:lift');
  });
});

describe('what leaves', () => {
  const leaving = leavingOf({ ...planned, jobs });

  test('is kept until the sea trial has passed, and has its marks wiped', () => {
    expect(leaving.map(({ unit }) => unit)).toEqual(
      gannet.kit
        .filter(({ fate }) => fate === 'goes')
        .map(({ id }) => id)
        .toSorted(),
    );
    for (const { after: job } of leaving) expect(job).toBe('sea-trial');
    const cables = leaving.flatMap((entry) => entry.cables);
    expect(new Set(cables).size).toBe(cables.length);
    expect(leaving.find(({ unit }) => unit === 'old-radar')?.cables).toEqual(['gc11']);
    const plotter = leaving.find(({ unit }) => unit === 'old-plotter');
    expect(plotter?.steps).toEqual(expect.arrayContaining(['waypoints-saved', 'accounts-unlinked', 'home-wiped']));
    expect(plotter?.byMaker).toEqual([]);
  });

  test('a radio with a number that is typed in once goes to its maker for that', () => {
    const kit = planned.index.boat.kit.map((unit) => (unit.id === 'ais' ? { ...unit, fate: 'goes' as const } : unit));
    const index = indexBoat({ ...planned.index.boat, kit });
    const ais = leavingOf({ index, plan: planned.plan, jobs }).find(({ unit }) => unit === 'ais');
    expect(ais?.byMaker).toEqual(['ship-number-wiped', 'call-sign-wiped']);
    expect(ais?.steps).toEqual(expect.arrayContaining(['ship-number-wiped', 'registrations-updated']));
  });
});

describe('aloft', () => {
  const bonxie = inputOf(example('bonxie'));
  const radars = (work: Work) => {
    const all = jobsOf({ ...bonxie, index: { ...bonxie.index, boat: { ...bonxie.index.boat, work } } });
    return all.filter(({ aloft, apart }) => aloft && apart.length > 0);
  };

  test('nobody works on the day a radar is live, unless it is locked off', () => {
    const open = radars({});
    expect(open.length).toBeGreaterThan(0);
    for (const { people, needs, cautions: said } of open) {
      expect([people, needs, said.includes('aloft')]).toEqual([2, ['aloft'], true]);
    }
    const live = [...new Set(open.flatMap(({ apart }) => apart))];
    expect(live).toContain('power-up:radar');
    expect(radars({ jobs: live.map((job) => ({ job, lockedOff: true as const })) })).toEqual([]);
  });
});
