import { describe, expect, it } from 'vitest';
import { ethernetLimits, poeClasses, poeLoopOhm, poeTypes, shipNetworkAddresses } from './ethernet.ts';

describe('power over Ethernet', () => {
  it.each([
    [1, 3],
    [2, 4],
  ] as const)(
    'type %i leaves class %i what the source gives less what the cable eats (BB-53, IEEE 802.3af and at, second-hand)',
    (type, cls) => {
      const amps = (poeTypes.find((row) => row.type === type)?.ma ?? 0) / 1000;
      const row = poeClasses.find((entry) => entry.cls === cls);
      const left = (row?.sourceW ?? 0) - amps ** 2 * poeLoopOhm[type].value;
      expect(left).toBeCloseTo(row?.deviceW ?? 0, 3);
    },
  );

  it('a 15.4 W port takes 1.51 A of a 12 V battery at 85 %, a 30 W port 2.94 A (BB-52, computed)', () => {
    const amps = (cls: number, volts: number): number =>
      (poeClasses.find((row) => row.cls === cls)?.sourceW ?? 0) / 0.85 / volts;
    expect([amps(3, 12), amps(3, 24), amps(4, 12), amps(4, 24)].map((value) => Math.round(value * 100) / 100)).toEqual([
      1.51, 0.75, 2.94, 1.47,
    ]);
  });

  it('never leaves a device more than its source gives', () => {
    for (const { sourceW, deviceW } of poeClasses) expect(deviceW).toBeLessThan(sourceW);
    for (const { portLeastV, deviceLeastV } of poeTypes) expect(deviceLeastV).toBeLessThan(portLeastV);
  });
});

describe('a network', () => {
  const asNumber = (address: string): number => address.split('.').reduce((sum, part) => sum * 256 + Number(part), 0);
  const isHost = (address: string): boolean =>
    asNumber(address) >= asNumber(shipNetworkAddresses.hostFirst) &&
    asNumber(address) <= asNumber(shipNetworkAddresses.hostLast);

  it('has hosts from 172.16.0.1 to 172.31.255.254 and multicast up to 239.192.0.64 (BB-55, IEC 61162-450:2011)', () => {
    expect(['172.16.0.1', '172.31.255.254', '172.32.0.1'].map(isHost)).toEqual([true, true, false]);
    expect(asNumber('239.192.0.64')).toBe(asNumber(shipNetworkAddresses.multicastLast));
  });

  it('reaches 100 m of copper, half of it in some radar cables', () => {
    expect(ethernetLimits.radarLink.value * 2).toBe(ethernetLimits.link.value);
  });
});
