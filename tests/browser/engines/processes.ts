// Programs that are started for a test and ended after it.

import { type ChildProcess, type SpawnOptions, spawn } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import type { Readable } from 'node:stream';

/** The path of the first of these programs that is installed. */
export function programNamed(...names: readonly string[]): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter);
  return names
    .flatMap((name) => folders.map((folder) => join(folder, name)))
    .find((path) => {
      try {
        accessSync(path, constants.X_OK);
        return true;
      } catch {
        return false;
      }
    });
}

/** Starts a program at the head of a group of its own, which does not outlive the tests. */
export function start(program: string, args: readonly string[], options: SpawnOptions): ChildProcess {
  const child = spawn(program, args, { ...options, detached: true });
  const kill = (): void => killGroup(child);
  process.once('exit', kill);
  child.once('exit', () => process.off('exit', kill));
  return child;
}

function killGroup({ pid }: ChildProcess): void {
  try {
    if (pid !== undefined) process.kill(-pid, 'SIGKILL');
  } catch {
    // It has ended meanwhile.
  }
}

/** Ends a program and all that it started. */
export async function end(child: ChildProcess): Promise<void> {
  if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) return;
  const ended = new Promise((done) => child.once('exit', done));
  killGroup(child);
  await ended;
}

/** What a program writes until it matches; an error with all of it where that does not come. */
export function written(
  from: Readable | null | undefined,
  sought: RegExp,
  timeoutMs = 60_000,
): Promise<string> {
  return new Promise((found, failed) => {
    let text = '';
    const giveUp = (): void => failed(new Error(`“${sought.source}” was not written: ${text}`));
    const timer = setTimeout(giveUp, timeoutMs);
    from?.on('data', (chunk) => {
      text += String(chunk);
      const match = sought.exec(text);
      if (!match) return;
      clearTimeout(timer);
      found(match[1] ?? match[0]);
    });
    from?.once('close', giveUp);
  });
}
