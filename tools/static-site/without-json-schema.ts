import type { Plugin } from 'vite';

/** The parts of the schema library that write a schema down as JSON schema, which its own code refers to from every schema. */
const parts = /[\\/]zod[\\/]v4[\\/]core[\\/](?:json-schema-processors|to-json-schema)\.js$/;

/** The names that a part gives to others. */
const namesIn = (code: string): readonly string[] => [
  ...[...code.matchAll(/^export (?:const|function) (\w+)/gm)].map(([, name = '']) => name),
  ...[...code.matchAll(/^export \{ \w+ as (\w+) \};?$/gm)].map(([, name = '']) => name),
];

/**
 * Leaves out of pages what writes JSON schema: only tools/schema.ts does so, on the maker's machine, and no bundler can see
 * that no page ever does.
 */
export const withoutJsonSchema = (): Plugin => ({
  name: 'fairlead-without-json-schema',
  enforce: 'pre',
  transform: {
    filter: { id: parts },
    handler: (code) => ({
      code: [
        'const absent = () => () => { throw new Error("A page writes no JSON schema."); };',
        ...namesIn(code).map((name) => `export { absent as ${name} };`),
      ].join('\n'),
      map: null,
    }),
  },
});
