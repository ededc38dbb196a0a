// What Debian's python3-ezdxf finds wrong with a DXF file.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

// ezdxf takes the SEQEND out of polylines of any R12 file it reads, its own too, and calls that a fix.
const AUDIT = `
import sys, json, ezdxf
found = ezdxf.readfile(sys.argv[1]).audit()
print(json.dumps([each.message for each in found.errors] + [each.message for each in found.fixes if 'SEQEND' not in each.message]))
`;

/** A Python that has the reader; undefined where none is installed. */
export const PYTHON_WITH_EZDXF = ['/usr/bin/python3', 'python3'].find(
  (python) => spawnSync(python, ['-c', 'import ezdxf']).status === 0,
);

/** What is found, as a JSON list, and what the reader itself complains of. */
export function auditDxf(text: string): { readonly found: string; readonly stderr: string } {
  const folder = mkdtempSync(join(tmpdir(), 'staywright-dxf-'));
  try {
    const file = join(folder, 'pattern.dxf');
    writeFileSync(file, text);
    const { stdout, stderr } = spawnSync(PYTHON_WITH_EZDXF ?? '', ['-c', AUDIT, file], { encoding: 'utf8' });
    return { found: stdout.trim(), stderr };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
