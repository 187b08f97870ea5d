import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const repository = resolve(import.meta.dirname, '..');

/** Core rooms in the order of ARCHITECTURE.md: a room may use rooms before it, never after it. */
const coreRooms = [
  'units',
  'facts',
  'boat',
  'starting',
  'pasted',
  'walk-round',
  'network',
  'readings',
  'prices',
  'coax',
  'log',
  'ways',
  'joins',
  'backbone',
  'power',
  'energy',
  'steering',
  'isolation',
  'traffic',
  'blackouts',
  'remote',
  'screens',
  'sources',
  'fitting',
  'shopping',
  'phases',
  'quote',
  'work',
  'proof',
  'cures',
  'leading',
  'as-fitted',
  'kit',
  'rules',
];
/** What each room outside core may import, besides itself. */
const outerRooms: Readonly<Record<string, readonly string[]>> = {
  papers: ['core'],
  library: ['core'],
  node: ['core', 'papers'],
  live: ['core', 'node'],
  server: ['core', 'papers', 'node', 'live'],
  cli: ['core', 'papers', 'node', 'live', 'server'],
  web: ['core', 'papers'],
};
/** Libraries that core and papers may use: pure ones only. */
const pureLibraries = [
  'zod',
  'mutative',
  'fflate',
  '@noble/hashes/sha2.js',
  '@noble/hashes/utils.js',
  'lean-qr',
  'clipper2-ts',
  '@tarikjabiri/dxf',
];

const sourceFiles = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !/\.test(-helper)?\.tsx?$/.test(name))
    // the tests of the nets plant this file for a moment, side by side with these
    .filter((name) => !name.endsWith('planted-fault.ts'))
    .map((name) => join(folder, name));

interface Import {
  readonly specifier: string;
  readonly typeOnly: boolean;
}

const importsOf = (file: string): Import[] => {
  const text = readFileSync(file, 'utf8');
  const pattern = /(?:^|\n)\s*(import|export)\s+(type\s+)?(?:[^'";]*?\sfrom\s+)?'([^']+)'/g;
  const dynamic = /import\(\s*'([^']+)'\s*\)/g;
  return [
    ...[...text.matchAll(pattern)].map((m) => ({ specifier: m[3] ?? '', typeOnly: m[2] !== undefined })),
    ...[...text.matchAll(dynamic)].map((m) => ({ specifier: m[1] ?? '', typeOnly: false })),
  ];
};

const coreRoomOf = (parts: readonly string[]): string | undefined => (parts.length > 1 ? parts[0] : undefined);

const coreArrow = ({ from, to, typeOnly }: { from: string[]; to: string[]; typeOnly: boolean }): string | undefined => {
  const [fromRoom, toRoom] = [coreRoomOf(from), coreRoomOf(to)];
  // plan.ts stands above every room; plan-shape.ts and its parts are a contract like the boat file, and so are the types of a sheet
  if (fromRoom === undefined || to[0]?.endsWith('-shape.ts') === true || to[0] === 'program.ts') return undefined;
  if (fromRoom === 'facts' && toRoom === 'boat' && typeOnly) return undefined;
  if (toRoom === undefined) return `a room may not use ${to.join('/')}`;
  return coreRooms.indexOf(toRoom) <= coreRooms.indexOf(fromRoom) ? undefined : `${fromRoom} stands before ${toRoom}`;
};

const libraryFault = (room: string, specifier: string): string | undefined => {
  if (!['core', 'papers', 'library'].includes(room)) return undefined;
  return pureLibraries.includes(specifier) ? undefined : `${room} is pure and may not use ${specifier}`;
};

const arrowFault = (src: string, file: string, { specifier, typeOnly }: Import): string | undefined => {
  const from = relative(src, file).split('/');
  const [room = ''] = from;
  if (!specifier.startsWith('.')) return libraryFault(room, specifier);
  const to = relative(src, resolve(dirname(file), specifier)).split('/');
  if (to[0] === '..') return specifier.endsWith('package.json') ? undefined : 'this leaves src';
  if (room !== to[0]) {
    return outerRooms[room]?.includes(to[0] ?? '') === true ? undefined : `${room} may not use ${to[0]}`;
  }
  return room === 'core' ? coreArrow({ from: from.slice(1), to: to.slice(1), typeOnly }) : undefined;
};

const brokenArrows = (src: string): string[] =>
  sourceFiles(src).flatMap((file) =>
    importsOf(file).flatMap((one) => {
      const fault = arrowFault(src, file, one);
      return fault === undefined ? [] : [`${relative(src, file)} -> ${one.specifier}: ${fault}`];
    }),
  );

/** A throw-away source tree with one file in it, to see a net catch what is planted. */
const planted = (path: string, text: string): string[] => {
  const src = mkdtempSync(join(tmpdir(), 'fairlead-net-'));
  mkdirSync(dirname(join(src, path)), { recursive: true });
  writeFileSync(join(src, path), text);
  try {
    return brokenArrows(src);
  } finally {
    rmSync(src, { recursive: true });
  }
};

describe('the arrows between the rooms', () => {
  test('go one way in the whole source tree', () => {
    expect(brokenArrows(join(repository, 'src'))).toEqual([]);
  });

  test.each([
    ['core that reads a file', 'core/boat/x.ts', "import { readFile } from 'node:fs';"],
    ['core that uses the app', 'core/boat/x.ts', "import { a } from '../../web/app.ts';"],
    ['a lower room that uses a higher one', 'core/boat/x.ts', "import { a } from '../rules/rule.ts';"],
    ['a fact that uses the boat’s code', 'core/facts/x.ts', "import { a } from '../boat/measure.ts';"],
    ['a room that calls the pipeline', 'core/rules/x.ts', "import { plan } from '../plan.ts';"],
    ['the library for other programs that reads files', 'library/x.ts', "import { a } from 'node:fs';"],
    ['papers that touch the disk', 'papers/x.ts', "export { a } from '../node/files/save-boat.ts';"],
    ['the app that uses the server', 'web/x.tsx', "const a = await import('../server/serve.ts');"],
    ['a source of a live bus that draws', 'live/x.ts', "import '../papers/drawing/shapes.ts';"],
    ['the node room that uses the command line', 'node/x.ts', "import '../cli/main.ts';"],
    ['core with a library of its own choosing', 'core/boat/x.ts', "import { z } from 'left-pad';"],
  ])('a net catches %s', (_, path, text) => {
    expect(planted(path, text)).toHaveLength(1);
  });

  test('a net lets a lawful import pass', () => {
    expect(planted('core/rules/x.ts', "import type { Boat } from '../boat/boat-schema.ts';")).toEqual([]);
  });
});

/** Every file that files lead to by what they import, types aside, and every library they name. */
const reachedFrom = (files: readonly string[]): { files: ReadonlySet<string>; libraries: ReadonlySet<string> } => {
  const [reached, libraries, waiting] = [new Set<string>(files), new Set<string>(), [...files]];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    for (const { specifier, typeOnly } of importsOf(file)) {
      if (typeOnly) continue;
      const found = resolve(dirname(file), specifier);
      if (!specifier.startsWith('.')) libraries.add(specifier);
      else if (!reached.has(found) && /\.tsx?$/.test(found)) {
        reached.add(found);
        waiting.push(found);
      }
    }
  }
  return { files: reached, libraries };
};

/** What can send to a bus, or start what can. */
const busWays = (src: string, files: readonly string[]): string[] => {
  const reached = reachedFrom(files);
  return [
    ...[...reached.files].map((file) => relative(src, file)).filter((file) => /^(live|server\/live|cli)\//.test(file)),
    ...[...reached.libraries].filter((name) => /^(node:)?(child_process|dgram|cluster)$|serialport/.test(name)),
  ];
};

describe('phones', () => {
  const src = join(repository, 'src');

  test('reach nothing that could send to a bus, by whatever way', () => {
    const files = sourceFiles(join(src, 'server/phones'));
    expect(files.length).toBeGreaterThan(10);
    expect(reachedFrom(files).files.size).toBeGreaterThan(200);
    expect(busWays(src, files)).toEqual([]);
  });

  test('a net catches a way to the bus that leads through another file', () => {
    expect(busWays(src, [join(src, 'server/serve.ts')])).toContain('live/ask-bus.ts');
    expect(busWays(src, [join(src, 'live/ask-bus.ts')])).toContain('node:child_process');
  });
});

describe('the size of things', () => {
  test('no source file is longer than 400 lines', () => {
    const long = sourceFiles(join(repository, 'src'))
      .filter((file) => !file.includes('/generated/'))
      .filter((file) => readFileSync(file, 'utf8').split('\n').length > 400);
    expect(long.map((file) => relative(repository, file))).toEqual([]);
  });

  test('every room that exists is named in ARCHITECTURE.md', () => {
    const text = readFileSync(join(repository, 'ARCHITECTURE.md'), 'utf8');
    const rooms = readdirSync(join(repository, 'src/core'), { withFileTypes: true }).filter((one) => one.isDirectory());
    for (const room of rooms) expect(text, `core/${room.name}`).toContain(`core/${room.name}`);
    for (const room of Object.keys(outerRooms)) {
      if (existsSync(join(repository, 'src', room))) expect(text, room).toContain(`src/${room}`);
    }
  });
});

/** What a module keeps by itself between one call and the next: an empty list made once, or a name that is given anew. */
const keptByModules = (folder: string): string[] =>
  sourceFiles(join(repository, folder)).flatMap((file) =>
    readFileSync(file, 'utf8')
      .split('\n')
      .filter((line) => !line.includes(': readonly '))
      .filter((line) => /^(export )?(let |const .*= new (Map|Set)(<.*>)?\(\);|const .*= (\[\]|\{\});)/.test(line))
      .map((line) => `${relative(repository, file)}: ${line}`),
  );

describe('a long day of edits', () => {
  test('fills no list in core or papers: what is kept is kept by keptFor and remember, which let it go', () => {
    const messagesOnly = 'src/core/proof/decode/decode-message.ts: const decoders = new Map<number, Decoder>();';
    expect([...keptByModules('src/core'), ...keptByModules('src/papers')]).toEqual([messagesOnly]);
  });

  test('the net catches a name that a worker gives anew', () => {
    expect(keptByModules('src/web/workers').length).toBeGreaterThan(0);
  });
});
