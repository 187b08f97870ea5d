#!/usr/bin/env node
import { UserError } from '../core/boat/user-error.ts';
import { commandLine } from './command-line.ts';
import { hearOutputTrouble } from './hear-output-trouble.ts';

const fail = (cause: unknown): void => {
  if (cause instanceof UserError) process.stderr.write(`${cause.text}\n`);
  else {
    const says = cause instanceof Error ? cause.message : String(cause);
    process.stderr.write(`This is a fault in the program, not in your file; nothing was changed. (${says})\n`);
  }
  process.exitCode = 2;
};

const isCommanderExit = (cause: unknown): cause is { exitCode: number } =>
  cause instanceof Error && cause.name === 'CommanderError';

hearOutputTrouble(process, (sentence) => {
  process.stderr.write(`${sentence}\n`);
  // whatever else is found is no answer that somebody has
  process.once('exit', () => {
    process.exitCode = 2;
  });
});

try {
  await commandLine.parseAsync(process.argv);
} catch (cause) {
  // commander has printed its own sentence; help and version end with 0, everything else is a wrong command
  if (isCommanderExit(cause)) process.exitCode = cause.exitCode === 0 ? 0 : 2;
  else fail(cause);
}
