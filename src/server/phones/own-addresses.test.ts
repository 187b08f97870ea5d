import { hostname } from 'node:os';
import { expect, test } from 'vitest';
import { ownAddresses, plainAddress } from './own-addresses.ts';

const own = ownAddresses(() => 0)();

test('this machine and its networks are near, the rest of the world is not', () => {
  for (const near of ['127.0.0.1', '127.3.2.1', ...own.addresses])
    expect([near, own.isNear(near)]).toEqual([near, true]);
  // reserved for documents (RFC 5737), a public one, another kind, and none at all; the machine could be in one of the first
  const far = ['198.51.100.7', '203.0.113.9', '9.9.9.9', '2001:db8::1', '::1', '', 'chart-table', '127.0.0.1.example'];
  for (const one of far)
    if (!own.addresses.some((address) => address.startsWith(one.slice(0, 8))))
      expect([one, own.isNear(one)]).toEqual([one, false]);
});

test('an address in the clothes of the newer kind is known', () => {
  expect(plainAddress('::ffff:192.168.1.7')).toBe('192.168.1.7');
  expect(plainAddress('192.168.1.7')).toBe('192.168.1.7');
  expect(plainAddress(undefined)).toBe('');
});

test('the machine answers to its addresses and its own name, and to no other', () => {
  for (const host of ['127.0.0.1', 'localhost', ...own.addresses]) expect(own.hosts.has(host)).toBe(true);
  const name = hostname().toLowerCase();
  if (/^[a-z0-9.-]+$/.test(name)) expect(own.hosts.has(name)).toBe(true);
  expect(own.hosts.has('elsewhere.example')).toBe(false);
  expect(own.hosts.has('')).toBe(false);
});
