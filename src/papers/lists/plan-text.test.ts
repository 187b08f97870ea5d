import { expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { tableCsv } from '../table/table-csv.ts';
import { aFinding } from './a-plan.test-helper.ts';
import { cableSchedule } from './cable-schedule.ts';
import { findingsText } from './findings-text.ts';
import { planText } from './plan-text.ts';

const textOf = (boat: Boat, known: Plan = quickPlan(boat)): string =>
  planText({ boat, plan: known, file: 'b.boat.json' });

test('findings are read gravest first, each with its cure, its source and its id', () => {
  const text = findingsText({}, [
    aFinding('side', { level: 'advice', says: 'Take the other side.' }),
    aFinding('drop', { cure: 'Shorten it.', limit: { value: 6, unit: 'm', source: 'published: a handbook' } }),
  ]);
  expect(text).toBe(
    [
      'FAULTS, which will not work or break a limit',
      '- The drop is too long.',
      '  Cure: Shorten it.',
      '  Limit: published: a handbook',
      '  [drop]',
      '',
      'ADVICE',
      '- Take the other side.',
      '  [side]',
      '',
    ].join('\n'),
  );
});

test('what was accepted comes last with its reason, but a danger stays where dangers stand', () => {
  const text = findingsText({}, [
    aFinding('spark', { level: 'danger', says: 'It may burn.', accepted: 'Never did.' }),
    aFinding('drop', { accepted: 'Measured; it works.' }),
    aFinding('side', { level: 'advice', says: 'Take the other side.' }),
  ]);
  expect(text.split('\n').filter((line) => /^[A-Z]{3}|Accepted/.test(line))).toEqual([
    'DANGER, before anything else',
    '  Accepted because: Never did.',
    'ADVICE',
    'ACCEPTED, each with its reason',
    '  Accepted because: Measured; it works.',
  ]);
});

test('a finding accepted in the boat file is accepted in the plan, and no step to take', () => {
  const wreck = anExample('wreck');
  const found = quickPlan(wreck).findings;
  const faults = found.filter(({ level }) => level === 'fault');
  const accepted = faults.map(({ id }) => ({ finding: id, reason: 'We live with it.' }));
  const after = quickPlan({ ...wreck, accepted });
  expect(after.findings.filter((one) => one.accepted === undefined)).toEqual(
    found.filter(({ level }) => level !== 'fault'),
  );
  expect(accepted.length).toBeGreaterThan(10);
});

test('a boat without findings is told so', () => {
  expect(findingsText({}, [])).toBe('Nothing wrong was found.\n');
});

test.each(['gannet', 'wreck'])('the plan of %s fits a terminal of 80 columns', (name) => {
  const boat = anExample(name);
  const text = textOf(boat);
  const long = text.split('\n').filter((line) => [...line].length > 80);
  expect(long).toEqual([]);
  expect(text).not.toMatch(/undefined|NaN|null|\.\.| {2,}\S.*\.;/);
});

test('the plan of the Tern says how many readings arrive and what to do next', () => {
  const { boat } = aBoat();
  const text = textOf(boat);
  expect(text).toContain('5 units: 4 come, 1 stay,');
  expect(text).toContain('3 of 3 readings arrive where they are needed.');
  expect(text).toMatch(/\nlongest drop +[\d.]+ m of 6\n/);
  expect(text).toMatch(/\nWHAT NEXT\n1\. At \w+: /);
});

test('a reading that does not arrive is named with its reason and its cure', () => {
  const { boat } = aBoat();
  const known = quickPlan(boat);
  const missing: Plan = {
    ...known,
    readings: [
      {
        reading: 'depth',
        at: 'display',
        must: true,
        arrives: false,
        by: [],
        backups: [],
        whyNot: {
          link: { broken: 'no-source' },
          says: 'Nothing aboard sends depth.',
          cures: [{ says: 'Fit a depth sensor.', edits: [], cost: 25_000 }],
        },
      },
    ],
  };
  const text = textOf(boat, missing);
  expect(text).toContain('0 of 1 readings arrive where they are needed.');
  expect(text).toContain(
    '- depth at Helm display: Nothing aboard sends depth.\n  Cure: Fit a depth sensor (about 250 EUR in parts).',
  );
  expect(text).toContain('Bring 1 reading to where it must be seen.');
});

test('the cable schedule lists every line and every other cable aboard, ends and route in words', () => {
  const boat = anExample('gannet');
  const known = quickPlan(boat);
  const rows = tableCsv(cableSchedule(boat, known)).trimEnd().split('\r\n');
  const used = new Set(known.lines.flatMap((line) => line.kept ?? []));
  expect(rows).toHaveLength(1 + known.lines.length + boat.cables.filter((cable) => !used.has(cable.id)).length);
  expect(rows[0]).toBe(
    'label,kind,from,to,conductors,route,length m,longest m,bought m,length is,fuse A,cable,wires,drip loops at,where its plug does not pass,line id',
  );
  expect(rows.find((row) => row.includes('gc12'))).toBe(
    ',analog,locker under the pilothouse helm,"bilge well with the transducer hole, forward of the pilothouse",,' +
      '"locker under the pilothouse helm > hollow behind the companion step, cabin to pilothouse > ' +
      'bilge well with the transducer hole, forward of the pilothouse",3.30,4.10,,known,,leaves: gc12,,,,',
  );
  expect(rows.join()).toContain('aboard: gc16');
});

test('the cable schedule says where a plug does not pass, what is done, and what else it could cost', () => {
  const boat = anExample('wreck');
  const row = tableCsv(cableSchedule(boat, quickPlan(boat)))
    .split('\r\n')
    .find((entry) => entry.endsWith('drop:gland-bus~gland-key.bus'));
  expect(row).toContain(
    'step behind a small gland: cut its plug off at one end and fit one behind the hole (about 51 EUR); or widen the hole to 16 mm (about 75 EUR)',
  );
});

test('a unit whose name looks like a formula cannot run in a spreadsheet', () => {
  const { boat } = aBoat().unit('display', { name: '=HYPERLINK("x")' });
  const schedule = tableCsv(cableSchedule(boat, quickPlan(boat)));
  expect(schedule).toContain('"\'=HYPERLINK(""x"") (bus)"');
  expect(schedule).not.toMatch(/(^|,|")=/m);
});
