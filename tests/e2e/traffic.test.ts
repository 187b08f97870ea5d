import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(async () => {
  await app.close();
});

test('traffic stands at the step Lines: a bar for each sender, its messages and their waits behind it, the lines below', async () => {
  const page = await openAnother(app, { window: 'phone', light: 'night' }, 'gannet');
  const block = page.locator('.traffic-block');
  await block.waitFor();
  expect(await block.locator('.traffic-bus p').first().textContent()).toMatch(/% expected, .*% at the worst/);
  expect((await block.textContent()) ?? '').toContain('They are our choice');
  const senders = block.locator('.traffic-sender summary');
  expect(await senders.count()).toBeGreaterThan(5);
  await senders.first().click();
  expect(await block.locator('.traffic-message:visible').first().textContent()).toMatch(/\(PGN \d+\) every .*waits/);
  expect(await block.getByText(/of 4800 baud/).count()).toBeGreaterThan(0);
  // nothing of it is wider than the phone
  const widths = await block.evaluate((element) => [element.scrollWidth, element.clientWidth]);
  expect(widths[0]).toBeLessThanOrEqual(widths[1] ?? 0);
  expect(app.complaints).toEqual([]);
});

test('a rate is changed for one unit, shown there, and taken back; and so are the waters', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'gannet');
  const block = page.locator('.traffic-block');
  await block.waitFor();
  const sender = block.locator('.traffic-sender').first();
  await sender.locator('summary').click();
  const field = sender.locator('.rate-field input').first();
  await field.fill('50');
  await field.press('Enter');
  const changed = block.locator('.traffic-sender summary', { hasText: 'rates changed' });
  await changed.waitFor();
  await block.getByRole('button', { name: 'as its sheet says' }).click();
  await changed.waitFor({ state: 'detached' });
  const full = (await block.locator('.traffic-bus p').first().textContent()) ?? '';
  await block.getByLabel('Other ships heard as in').selectOption('quiet');
  await block.locator('.traffic-bus p', { hasNotText: full }).first().waitFor();
  await block.getByText(/of the bus, as in quiet waters/).waitFor();
  await page.getByRole('button', { name: /^undo: / }).click();
  await block.getByText(/of the bus, as in a busy harbour/).waitFor();
  expect(app.complaints).toEqual([]);
});
