import { expect, test } from 'vitest';
import { boatText } from './boat-text.ts';
import { aFullBoat } from './full-boat.test-helper.ts';

test('a boat and her copy have one text, and any part that differs makes another', () => {
  const boat = aFullBoat();
  const text = boatText(boat);
  expect(boatText(structuredClone(boat))).toBe(text);
  expect(boatText({ name: 'Tern', needs: [] })).toBe('name:"Tern"\nneeds:[]');
  const texts = Object.keys(boat).map((part) => boatText({ ...boat, [part]: [] }));
  expect(texts).not.toContain(text);
  expect(new Set(texts).size).toBe(Object.keys(boat).length);
});
