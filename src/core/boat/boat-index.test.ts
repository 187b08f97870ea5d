import { describe, expect, it } from 'vitest';
import { aBoat } from './a-boat.test-helper.ts';
import { indexBoat, portOf } from './boat-index.ts';

const sendsOf = (instances: { port: string; reading: 'heading' | 'rate-of-turn' | 'position'; instance: number }[]) =>
  portOf(indexBoat(aBoat().unit('compass', { instances }).boat), 'compass.n2k')?.sends;

describe('a unit with its own instance numbers', () => {
  it('sends the bus message of that reading with its own number', () => {
    const sends = sendsOf([{ port: 'n2k', reading: 'heading', instance: 2 }]);
    expect(sends?.map((sent) => [sent.pgn, sent.instance])).toEqual([
      [127250, 2],
      [127251, undefined],
      [127257, undefined],
    ]);
  });

  it('leaves the sheet alone where another port or another reading is meant', () => {
    const plain = sendsOf([]);
    expect(sendsOf([{ port: 'dc', reading: 'heading', instance: 2 }])).toEqual(plain);
    expect(sendsOf([{ port: 'n2k', reading: 'position', instance: 2 }])).toEqual(plain);
  });

  it('sends a bare reading with its own number', () => {
    const boat = aBoat()
      .sheet('heading-sensor', (sheet) => {
        for (const port of sheet.ports) port.sends = [{ reading: 'heading' }];
      })
      .unit('compass', { instances: [{ port: 'n2k', reading: 'heading', instance: 7 }] }).boat;
    expect(portOf(indexBoat(boat), 'compass.n2k')?.sends).toEqual([{ reading: 'heading', instance: 7 }]);
  });

  it('keeps one tank message free of a number when it stands for tanks of different numbers', () => {
    const tanks = (fuel: number, water: number) =>
      aBoat()
        .sheet('heading-sensor', (sheet) => {
          for (const port of sheet.ports) port.sends = [{ pgn: 127505 }];
        })
        .unit('compass', {
          instances: [
            { port: 'n2k', reading: 'fuel-level', instance: fuel },
            { port: 'n2k', reading: 'water-level', instance: water },
          ],
        }).boat;
    expect(portOf(indexBoat(tanks(0, 1)), 'compass.n2k')?.sends).toEqual([{ pgn: 127505 }]);
    expect(portOf(indexBoat(tanks(3, 3)), 'compass.n2k')?.sends).toEqual([{ pgn: 127505, instance: 3 }]);
  });
});
