import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import type { LineEntry, ReadingEntry } from '../../plan-shape.ts';
import { type Sketch, type UnitSketch, wired } from '../../readings/wired.test-helper.ts';
import { findingsOf, type RuleCase } from '../rule-case.test-helper.ts';
import { told } from '../told.test-helper.ts';
import { provenanceRules } from './index.ts';

const of = (rule: string, given: RuleCase) => told(provenanceRules, `provenance/${rule}`, given);

const idsOf = (id: string, given: RuleCase): string[] =>
  provenanceRules
    .filter((rule) => rule.id === `provenance/${id}`)
    .flatMap((rule) => findingsOf(rule, given).map((f) => f.id));

const wire = (dialect?: string): UnitSketch => ({
  ports: { net: { protocol: 'single-wire', ...(dialect === undefined ? {} : { dialect }) } },
});

test('generations that may not speak are told by the names of who speaks, where two do', () => {
  const said = (units: Sketch['units'], ...more: string[]) => {
    const boat = wired({
      units,
      joins: { line: Object.keys(units).map((id) => `${id}.net`), ...Object.fromEntries(more.map((id) => [id, []])) },
    });
    const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
    return of('dialect-not-confirmed', { boat, plan: { joins } });
  };
  expect(said({ head: wire('maker-a/1'), computer: wire('maker-a/2'), plain: wire() })).toEqual([
    'doubt computer head line: Computer and head speak one maker’s language, but not surely the same generation of it. They may need an update, or not work together at all. [ / ] Look up in both manuals, or ask the maker, whether these two work together, and enter who said so on the join.',
  ]);
  expect(said({ head: wire('maker-a/unknown'), plain: wire() })).toEqual([]);
  expect(said({ head: wire(), plain: wire() })).toEqual([]);
  expect(said({ head: wire('maker-a/1'), computer: wire('maker-b/2') })).toEqual([]);
});

const line = (own: Partial<LineEntry>): LineEntry => ({
  id: 'line',
  kind: 'pair',
  from: 'converter.wires',
  to: 'radio.wires',
  places: ['locker', 'helm'],
  ways: ['locker-helm'],
  lengthM: 3,
  longestM: 3.2,
  guessed: false,
  ...own,
});

test('a cable aboard is told by the name it has, with what a new one of its kind would be', () => {
  const cable = (own: object): Boat =>
    aBoat().with({
      cables: [
        {
          id: 'old',
          kind: 'ethernet',
          from: { place: 'locker' },
          to: { place: 'helm' },
          ways: ['locker-helm'],
          length: { valueM: 3, how: 'taped' },
          diameterMm: 6,
          condition: 'doubtful',
          fate: 'stays',
          ...own,
        },
      ],
    }).boat;
  const plan = { lines: [line({}), line({ kind: 'single-wire', kept: ['nothing', 'old'] })] };
  expect(of('kept-cable-untested', { boat: cable({ name: 'Old grey cable', condition: 'bad' }), plan })).toEqual([
    'fault old: The single wire line from Converter for the old radio to Old radio is to run on the cable Old grey cable, which is in bad condition. [ / ] Test it end to end before you order: resistance of each conductor, and insulation between them. If it fails, take it out and enter it as going. A new one would be 3.19 m, about 11.17 EUR without plugs and work.',
  ]);
  expect(of('kept-cable-untested', { boat: cable({}), plan })).toEqual([
    'doubt old: The single wire line from Converter for the old radio to Old radio is to run on the cable old, which is in doubtful condition. [ / ] Test it end to end before you order: resistance of each conductor, and insulation between them. If it fails, take it out and enter it as going. A new one would be 3.19 m, about 11.17 EUR without plugs and work.',
  ]);
});

test('a length only guessed is told of the trunk that is bought, whole', () => {
  const walk = [
    { place: 'helm', tees: [] },
    { place: 'locker', via: 'locker-helm', tees: [] },
    { place: 'mast-base', via: 'locker-mast', tees: [] },
  ];
  const { boat } = aBoat()
    .change((draft) => {
      for (const way of draft.ways)
        if (way.id === 'locker-helm') way.length = { valueM: 2.2, how: 'guessed', lessM: 0.2, moreM: 0.66 };
    })
    .with({ pins: { layouts: { nav: { grade: 'light', walk, state: 'bought' } } } });
  expect(of('length-guessed-and-bought', { boat })).toEqual([
    'doubt locker-helm nav: The trunk of Navigation bus is bought, and its way from electrical locker to helm dash is guessed: 2.20 m, and up to 2.86 m. The piece may be 0.66 m short. [0.66 m / ] Tape the way before any piece is cut, and enter the length as taped.',
  ]);
});

test('a limit of the owner, and one that nothing asks for, are told with their ids', () => {
  const limits = {
    'nmea2000-one-drop': { value: 4, reason: 'old tees' },
    'nmea2000-one-dorp': { value: 4, reason: 'x' },
  };
  const given = { boat: aBoat().with({ limits }).boat };
  expect(of('limit-overridden', given)).toEqual([
    'doubt : The boat file sets a limit "nmea2000-one-dorp", which nothing here asks for, so it does nothing. [ / ] Mend its name, or take it out.',
    'advice : The limit nmea2000-one-drop is 4 m on this boat; else it would be 6 m. Reason: old tees [4 m / 6] Keep it if the reason still holds; take it out of the boat file if not.',
  ]);
  expect(idsOf('limit-overridden', given)).toEqual([
    'provenance/limit-overridden:nmea2000-one-dorp',
    'provenance/limit-overridden:nmea2000-one-drop',
  ]);
});

test('readings that rest on typical sheets are counted, and the sheets that are typical', () => {
  const { boat } = aBoat().sheet('small-display', (sheet) => {
    sheet.source = 'manual';
  });
  const entry = (own: Partial<ReadingEntry> = {}): ReadingEntry => ({
    reading: 'position',
    at: 'display',
    must: true,
    arrives: true,
    rests: 'typical',
    by: ['gnss.n2k', 'display.n2k'],
    backups: [],
    ...own,
  });
  const [sure, far] = [
    entry({ rests: 'manual' }),
    entry({ by: ['nothing.n2k', 'compass.n2k', 'gnss.n2k', 'display.n2k'] }),
  ];
  const said = (...readings: ReadingEntry[]) => of('needs-rest-on-typical-sheets', { boat, plan: { readings } });
  expect([said(entry()), said(entry(), sure), said(entry(), far), said(entry(), far, sure)].flat()).toEqual([
    'doubt : The one reading that must arrive rests on typical sheets, 1 sheet in all. The units you buy may send or hear something else. [1 readings / ] Before you order, check what each unit sends and hears in its manual and note the page in its sheet.',
    'doubt : 1 of the 2 readings that must arrive rests on typical sheets, 1 sheet in all. The units you buy may send or hear something else. [1 readings / ] Before you order, check what each unit sends and hears in its manual and note the page in its sheet.',
    'doubt : All 2 readings that must arrive rest on typical sheets, 2 sheets in all. The units you buy may send or hear something else. [2 readings / ] Before you order, check what each unit sends and hears in its manual and note the page in its sheet.',
    'doubt : 2 of the 3 readings that must arrive rest on typical sheets, 2 sheets in all. The units you buy may send or hear something else. [2 readings / ] Before you order, check what each unit sends and hears in its manual and note the page in its sheet.',
  ]);
  expect([said(sure), said(entry({ arrives: false })), said(entry({ must: false }))]).toEqual([[], [], []]);
});

test('a sheet without a note is told by its name', () => {
  const { boat } = aBoat().sheet('small-display', (sheet) => {
    sheet.source = 'manual';
  });
  expect(of('manual-without-note', { boat })).toEqual([
    'doubt small-display: The sheet "7-inch multifunction display" is marked as taken from the manual, but not from which one and which page; nobody can check it later. [ / ] Note the manual and the page in the sheet.',
  ]);
});
