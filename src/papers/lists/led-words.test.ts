import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { leadChoices } from '../../core/leading/lead-choices.ts';
import { ledLine } from '../../core/led-line.ts';
import { plan } from '../../core/plan.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { leadWords, ledWords, throughWords } from './led-words.ts';

const radio = 'pair:converter.wires~radio.wires';

const radioOf = (boat = aBoat().boat) => {
  const line = plan(boat, new Map()).lines.find(({ id }) => id === radio);
  const choices = line === undefined ? [] : leadChoices(boat, line);
  const choice = choices.find(({ through }) => 'place' in through && through.place === 'mast-base');
  if (line === undefined || choice === undefined) throw new Error('The pair cannot be led by the mast.');
  const led = ledLine({ boat, layouts: new Map(), line: radio, ways: choice.ways });
  if (led === undefined) throw new Error('The pair is not in the plan.');
  return { names: cardBoat(boat), line, choice, led };
};

test('a route through a place says where, how long, and how much longer than now', () => {
  const { names, line, choice } = radioOf();
  const more = (choice.lengthM - line.lengthM).toFixed(2);
  expect(leadWords(names, line, choice)).toBe(
    `Through ${names.places.get('mast-base')?.name}: about ${choice.lengthM.toFixed(2)} m, at most ${choice.longestM.toFixed(2)} m, ${more} m longer than now.`,
  );
  const shorter = leadWords(names, { ...line, lengthM: choice.lengthM + 1 }, choice);
  expect(shorter).toMatch(/, 1\.00 m shorter than now\.$/);
  expect(leadWords(names, { ...line, lengthM: choice.lengthM }, choice)).toMatch(/, as long as now\.$/);
});

test('a way is named by both its ends', () => {
  const { names } = radioOf();
  const [one, other] = ['helm', 'mast-base'].map((id) => names.places.get(id)?.name);
  expect([`the way from ${one} to ${other}`, `the way from ${other} to ${one}`]).toContain(
    throughWords(names, { through: { way: 'helm-mast' } }),
  );
});

test('the price is the difference of the order, and what breaks stands under it by the name of the line', () => {
  const { line, led } = radioOf();
  const says = (costMore: number): string => ledWords(line, { ...led, costMore, breaks: [] }, 'EUR').price;
  expect(says(840)).toBe('The order would cost 8.40 EUR more. No limit breaks that holds now.');
  expect(says(-5)).toBe('The order would cost 0.05 EUR less. No limit breaks that holds now.');
  expect(says(0)).toBe('The order would cost the same. No limit breaks that holds now.');
  const { boat } = aBoat();
  const shut = boat.ways.map((way) => (way.id === 'helm-mast' ? { ...way, allows: ['coax' as const] } : way));
  const through = ledLine({
    boat: { ...boat, ways: shut },
    layouts: new Map(),
    line: radio,
    ways: ['locker-mast', 'helm-mast'],
  });
  const words = ledWords(line, through ?? led, 'EUR');
  expect(words.price).toMatch(/, but not within the limits:$/);
  expect(words.breaks.join()).toContain('The route settled for the ');
  expect(words.breaks.join()).not.toContain(radio);
});
