import { describe, expect, test } from 'vitest';
import { productPayload } from '../../../../tests/recordings/payloads.ts';
import { readProductInformation } from './product-information.ts';

describe('product information', () => {
  test('MS-61: LEN 1, 3, 4, 10 and 0 make 18 units of 50 mA, 900 mA', () => {
    const lens = [1, 3, 4, 10, 0].map(
      (len) => readProductInformation(productPayload({ model: 'SENSOR', len }))?.len ?? -1,
    );
    const sum = lens.reduce((total, len) => total + len, 0);
    expect([sum, sum * 50]).toEqual([18, 900]);
  });

  test('texts end at FF or 00 and lose the spaces and @ around them', () => {
    const payload = productPayload({ model: 'SENSOR 12', len: 2 });
    payload.set([0x40, 0x41, 0x42, 0x20, 0x40, 0x00, 0x43], 36);
    payload.set([0x44, 0x01, 0x45, 0xff, 0x46], 68);
    expect(readProductInformation(payload)).toMatchObject({ model: 'SENSOR 12', software: 'AB', modelVersion: 'D E' });
  });

  test('an open LEN is unknown, not 255 units', () => {
    expect(readProductInformation(productPayload({ model: 'SENSOR', len: 0xff }))).not.toHaveProperty('len');
  });

  test('a message cut short is no product information', () => {
    expect(readProductInformation(productPayload({ model: 'SENSOR', len: 1 }).subarray(0, 133))).toBeUndefined();
  });
});
