import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const folder = new URL('../src/web/', import.meta.url);
const sheets = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.css'));
const read = (name: string): string => readFileSync(new URL(name, folder), 'utf8');

describe('nothing moves by itself (WCAG 2.2, 2.3.3; where the system asks for reduced motion nothing fades either)', () => {
  it.each(sheets)('%s has no movement but the one fade of the theme', (name) => {
    const css = read(name);
    expect(css).not.toMatch(/@keyframes|animation(-name)?\s*:|scroll-behavior:\s*smooth/);
    for (const [transition] of css.matchAll(/transition[\w-]*\s*:[^;]*;/g)) expect(transition).toContain('var(--fade)');
  });

  it('the fade is none where less motion is asked for', () => {
    expect(read('theme/page.css')).toMatch(
      /@media \(prefers-reduced-motion: reduce\) \{\s*:root \{\s*--fade: 0ms;\s*\}\s*\}/,
    );
    expect(sheets.filter((name) => /--fade\s*:/.test(read(name)))).toEqual(['theme/page.css']);
  });

  it('the code of the app asks for no smooth scrolling', () => {
    const code = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => /\.tsx?$/.test(name));
    expect(code.filter((name) => /behavior: 'smooth'|\.animate\(/.test(read(name)))).toEqual([]);
  });
});
