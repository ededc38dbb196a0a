// Writes what was made into a directory, and tells where that cannot be done.

import { rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { CLI, type Read, refuse } from '../../document';
import { makeDirectory } from './makeDirectory';

/** A file by its name in the directory. */
export type Content = readonly [name: string, content: string | Uint8Array];

/** Paths in the order written. `isDeviceFull`: not the directory that was asked for is at fault, but the room there. */
export type Written<T = readonly string[]> = Read<T> & { readonly isDeviceFull?: boolean };

/** The system's names for a device or a share of it that is full, and for one that fails. */
const FULL: readonly string[] = ['ENOSPC', 'EDQUOT', 'EIO'];

/**
 * Writes files into a directory, which is made where it is missing.
 *
 * @param earlier what an earlier run may have left there and must not stay beside these; a directory goes with all in it
 * @param folder a directory to be made inside `out`; null for none
 */
export async function writtenFiles(
  contents: readonly Content[],
  out: string,
  earlier: readonly string[],
  folder: string | null = null,
): Promise<Written> {
  try {
    await makeDirectory(out);
    for (const name of earlier) await rm(join(out, name), { recursive: true, force: true });
    if (folder !== null) await makeDirectory(join(out, folder));
    for (const [name, content] of contents) await writeFile(join(out, name), content);
    return { ok: true, value: contents.map(([name]) => join(out, name)) };
  } catch (error) {
    if (!isSystemError(error)) throw error;
    const refused = refuse('--out', CLI.filesNotWritten({ directory: out, code: error.code }));
    return { ...refused, isDeviceFull: FULL.includes(error.code) };
  }
}

/** True of an error of the system in reading or writing, as opposed to a fault of the program. */
export const isSystemError = (error: unknown): error is Error & { code: string; syscall: string } =>
  error instanceof Error && 'syscall' in error && 'code' in error && typeof error.code === 'string';
