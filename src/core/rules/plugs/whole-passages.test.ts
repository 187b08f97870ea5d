import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat, Cable } from '../../boat/boat-schema.ts';
import { plugPassage } from '../../facts/cable-work.ts';
import type { LineEntry, PassageEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { sourceWords } from '../rule-words.ts';
import { told } from '../told.test-helper.ts';
import { plugsRules } from './index.ts';
import { plugTooBigForTheWay } from './plug-too-big-for-the-way.ts';

const drop: LineEntry = {
  ...{ id: 'drop:gnss.bus~nav', kind: 'drop', from: 'gnss.bus', to: 'nav', places: ['stern-rail', 'locker'] },
  ...{ ways: ['locker-stern'], lengthM: 4.8, longestM: 5, guessed: false },
};
const old = (id: string, diameterMm: number, own: Partial<Cable> = {}): Cable => ({
  ...{ id, kind: 'coax', ways: ['locker-stern'], diameterMm, condition: 'good', fate: 'stays' },
  ...{ from: { place: 'locker' }, to: { place: 'stern-rail' }, length: { valueM: 5, how: 'taped' }, ...own },
});
interface Case {
  readonly boreMm?: number;
  readonly cables?: Cable[];
  readonly passages?: PassageEntry[];
  readonly lines?: LineEntry[];
  readonly prices?: Boat['prices'];
}
const given = ({ boreMm = 12, cables = [], passages = [], lines = [drop], prices }: Case) => ({
  boat: aBoat()
    .with({ cables, ...(prices && { prices }) })
    .change((draft) => {
      for (const way of draft.ways) if (way.id === 'locker-stern') way.bore = { mm: boreMm, how: 'taped' };
    }).boat,
  plan: { lines, passages },
});
const found = (asked: Case) => told(plugsRules, 'plugs/plug-too-big-for-the-way', given(asked));
const cut = (cost: number): PassageEntry['choices'][number] => ({ does: 'fit-plug', cost });
const wider: PassageEntry['choices'][number] = { does: 'wider-hole', cost: 7449, wideMm: 16 };
const round = (...ways: string[]): PassageEntry['choices'][number] => ({ does: 'other-way', cost: 16_250, ways });
const passage = (own: Partial<PassageEntry> = {}): PassageEntry => ({
  ...{ way: 'locker-stern', line: 'drop:gnss.bus~nav', takes: 'fit-plug', choices: [cut(2600)], ...own },
});
const cureOf = (...passages: PassageEntry[]) => found({ passages })[0]?.match(/ \[12 mm \/ 16\] (.*)$/)?.[1];

const way = 'The way from electrical locker to stern rail is';
const noPlug = 'Order cable without a plug at this end and a plug to fit on the spot, or widen the hole.';

test('a plug that does not pass is told by way, bore and plug, with how many cables and beside what', () => {
  const said = (mm: number, words: string) => [
    `doubt locker-stern: ${way} ${mm} mm wide. ${words} [${mm} mm / 16] ${noPlug}`,
  ];
  const goes = 'A cable goes through it whose moulded plug needs 16 mm and does not pass';
  expect(found({})).toEqual(said(12, `${goes}.`));
  const two = { lines: [drop, { ...drop, id: 'drop:compass.bus~nav' }] };
  expect(found(two)).toEqual(said(12, '2 cables go through it whose moulded plug needs 16 mm and does not pass.'));
  expect(found({ boreMm: 20, cables: [old('a', 6)] })).toEqual(said(20, `${goes} beside the cable in it.`));
  expect(found({ boreMm: 20, cables: [old('a', 6), old('b', 5)] })).toEqual(
    said(20, `${goes} beside the cables in it.`),
  );
});

test('only cables that stay in this very way are in it, and a way into which nothing new goes is none', () => {
  expect(
    found({ boreMm: 20, cables: [old('a', 9, { fate: 'goes' }), old('b', 9, { ways: ['locker-helm'] })] }),
  ).toEqual([]);
  expect(found({ lines: [], cables: [old('a', 11), old('b', 11)] })).toEqual([]);
});

test('beside cables it is held by what is in the hole, alone by what the hole is; where it may pass a trial tells', () => {
  const sourceOf = (asked: Case) => findingsOf(plugTooBigForTheWay, given(asked))[0]?.limit?.source;
  expect(sourceOf({})).toBe(sourceWords('practice-plug-holes'));
  expect(sourceOf({ boreMm: 20, cables: [old('a', 6)] })).toBe(sourceWords(plugPassage.source));
  const perhaps = { boreMm: 25, cables: [old('a', 8), old('b', 7)], passages: [passage({ choices: [cut(0)] })] };
  expect(found(perhaps)).toEqual([
    `doubt locker-stern: ${way} 25 mm wide. A cable goes through it whose moulded plug needs 16 mm; whether it passes beside the cables in it, only a trial tells. [25 mm / 16] Pull a dummy of the plug’s size through first; else order cable without a plug at this end and fit one on the spot.`,
  ]);
  const thin: LineEntry = { ...drop, id: 'ethernet:gnss.bus~display.bus', kind: 'ethernet', to: 'display.bus' };
  const mixed = { ...given({ boreMm: 20, lines: [drop, thin] }), bus: { grade: 'heavy' as const } };
  expect(told(plugsRules, 'plugs/plug-too-big-for-the-way', mixed)[0]).toContain(
    'A cable goes through it whose moulded plug needs 28 mm',
  );
});

test('it is advice only where each cable is drawn before it has its plugs', () => {
  const level = (...passages: PassageEntry[]) => found({ passages })[0]?.split(' ')[0];
  expect(level(passage({ choices: [cut(0), wider] }))).toBe('advice');
  expect(level(passage({ choices: [cut(0)] }), passage({ choices: [cut(2600)] }))).toBe('doubt');
  expect(level(passage({ takes: 'wider-hole', choices: [{ ...wider, cost: 0 }] }))).toBe('doubt');
  const { takes: _takes, ...open } = passage({ choices: [] });
  expect([level(open), level(), level({ ...passage(), way: 'locker-helm', choices: [cut(0)] })]).toEqual([
    'doubt',
    'doubt',
    'doubt',
  ]);
});

test('what can be done is told once for one line and for all that can do the same, else line by line, three of them', () => {
  const one =
    'ut its plug off at one end and fit one behind the hole (about 26 EUR); or widen the hole to 16 mm (about 74 EUR)';
  const choices = [cut(2600), wider];
  expect(cureOf(passage({ choices }))).toBe(`C${one}.`);
  const none = passage({ choices: [] });
  expect(cureOf(none, passage({ choices }), none)).toBe(`C${one}.`);
  expect(cureOf(none)).toBe(noPlug);
  expect(cureOf(passage({ choices }), passage({ line: 'drop:compass.bus~nav', choices }))).toBe(
    `For each cable: c${one}.`,
  );
  const each = ['gnss.bus~nav', 'compass.bus~radio.dc', 'radio.dc~nav', 'display.bus~nav'].map((ends, at) =>
    passage({ line: `drop:${ends}`, choices: [cut(100 * at)] }),
  );
  const said = [
    'GNSS on the stern rail: draw the cable before it gets its plugs (at no cost).',
    'Heading sensor at the mast and Old radio: cut its plug off at one end and fit one behind the hole (about 1 EUR).',
    'Old radio: cut its plug off at one end and fit one behind the hole (about 2 EUR).',
  ];
  expect(cureOf(...each.slice(0, 3))).toBe(said.join(' '));
  expect(cureOf(...each)).toBe([...said, '1 more is priced beside its line.'].join(' '));
  expect(cureOf(...each, passage({ choices: [cut(900)] }))).toMatch(/ 2 more are priced beside their lines\.$/);
});

test('prices are in the currency of the boat', () => {
  const prices = { currency: 'GBP' } as NonNullable<Boat['prices']>;
  expect(found({ passages: [passage()], prices })[0]).toContain('(about 26 GBP)');
});

test('a cable led round is advice of its own, by how many and by the places it comes by', () => {
  const led = (...lines: string[]) =>
    found({
      boreMm: 14,
      lines: [],
      passages: lines.map((line) =>
        passage({ line, takes: 'other-way', choices: [round('locker-mast', 'helm-mast'), cut(2600)] }),
      ),
    });
  const said = (cables: string, cure: string) => [
    `advice locker-stern: ${way} 14 mm wide, too little for a moulded plug. ${cables} led another way, which costs less than a wider hole or a plug fitted behind it. [14 mm / ] ${cure}ead it by mast base (about 163 EUR); or cut its plug off at one end and fit one behind the hole (about 26 EUR).`,
  ];
  expect(led('drop:gnss.bus~nav')).toEqual(said('A cable that would go through it is', 'L'));
  expect(led('drop:gnss.bus~nav', 'drop:compass.bus~nav')).toEqual(
    said('2 cables that would go through it are', 'For each cable: l'),
  );
  const both = [
    passage(),
    passage({ line: 'drop:compass.bus~nav', takes: 'other-way', choices: [round('locker-mast')] }),
  ];
  expect(found({ passages: both })).toHaveLength(2);
});

test('cures name the line, what is done with its price, and lead it another way as an edit; what is done already is none', () => {
  const curesOf = (own: Partial<PassageEntry>) =>
    findingsOf(plugTooBigForTheWay, given({ passages: [passage(own)] })).map(({ cures }) => cures);
  const choices = [cut(2600), round('locker-mast', 'helm-mast'), round('locker-mast')];
  const name = 'GNSS on the stern rail:';
  const fit = { says: `${name} cut its plug off at one end and fit one behind the hole.`, edits: [], cost: 2600 };
  const edit = (ways: string[]) => [{ edit: 'pin-route', params: { line: drop.id, ways, state: 'fixed' } }];
  const by = { says: `${name} lead it by mast base.`, edits: edit(['locker-mast', 'helm-mast']), cost: 16_250 };
  const direct = { says: `${name} lead it another way.`, edits: edit(['locker-mast']), cost: 16_250 };
  expect(curesOf({ choices })).toEqual([[fit, by, direct]]);
  expect(curesOf({ choices, takes: 'other-way' })).toEqual([undefined, [fit]]);
  expect(curesOf({ choices: [] })).toEqual([undefined]);
});
