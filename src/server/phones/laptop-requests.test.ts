import { expect, test } from 'vitest';
import { phonesUnderTest } from './phones-under-test.test-helper.ts';

const post = (body: string) => ({ method: 'POST', body });

test('the code is told to the laptop’s own page only', async () => {
  const { atLaptop, appPort, onPhone } = await phonesUnderTest();
  await atLaptop('/api/phones/code', { method: 'POST', body: '{}' });
  const rebound = { host: `elsewhere.example:${appPort}` };
  expect((await atLaptop('/api/phones', { headers: rebound })).status).toBe(403);
  const foreign = { origin: 'http://elsewhere.example' };
  for (const [path, wish] of [
    ['/api/phones/code', { method: 'POST', body: '{}' }],
    ['/api/phones/lan', { method: 'POST', body: '{"on":true}' }],
    ['/api/phones/abcdefgh', { method: 'DELETE' }],
  ] as const)
    expect((await atLaptop(path, { ...wish, headers: foreign })).status).toBe(403);
  expect((await onPhone('/api/phones')).status).toBe(404);
});

test('a wrong code says the same whether one stands, ran out or was never given', async () => {
  const { atLaptop, onPhone } = await phonesUnderTest();
  const wish = { ...post('{"code":"abcdef","name":"x"}'), headers: { 'content-type': 'application/json' } };
  expect((await onPhone('/api/phone/pair', wish)).status).toBe(422);
  const wrong = { ...wish, body: '{"code":"000000","name":"x"}' };
  const none = await onPhone('/api/phone/pair', wrong);
  await atLaptop('/api/phones/code', { method: 'POST', body: '{}' });
  const standing = await onPhone('/api/phone/pair', wrong);
  expect([none.status, none.text]).toEqual([standing.status, standing.text]);
  const tries = [];
  for (let time = 0; time < 10; time += 1) tries.push((await onPhone('/api/phone/pair', wrong)).status);
  expect(tries.slice(-2)).toEqual([429, 429]);
});

test.each(['', ' ', 'a'.repeat(41), 'Anna\u0000', 'Anna\u202Enna', 'a\u200Bb'])(
  'a phone cannot be called %j',
  async (name) => {
    const { onPhone } = await phonesUnderTest();
    const wish = { ...post(JSON.stringify({ code: '000000', name })), headers: { 'content-type': 'application/json' } };
    expect((await onPhone('/api/phone/pair', wish)).status).toBe(422);
  },
);

test('with phones no longer let in nobody answers, and who was paired is so again afterwards', async () => {
  const { pair, atLaptop, phones, onPhone } = await phonesUnderTest();
  const { device } = await pair();
  const off = await atLaptop('/api/phones/lan', { method: 'POST', body: '{"on":false}' });
  expect(off.json).toMatchObject({ on: false, addresses: [], devices: [{ id: device.id }] });
  await expect(onPhone('/')).rejects.toThrow();
  expect((await atLaptop('/api/phones/code', { method: 'POST', body: '{}' })).status).toBe(409);
  expect((await atLaptop('/api/phones/lan', { method: 'POST', body: '{"on":true}' })).json).toMatchObject({ on: true });
  expect((await phones.told()).port).toBeGreaterThan(0);
});
