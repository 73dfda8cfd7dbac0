import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { NewNote } from '../../../../domain/store/notes.ts';

/** A folder of its own for a test, gone after it. */
export function freshDir(): string {
  const dir = mkdtempSync(join(tmpdir(), 'pawl-test-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  return dir;
}

export const aNote = (more: Partial<NewNote> = {}): NewNote => ({ key: 'm:1:1', at: '2026-03-04T15:20:00-05:00', door: 'terminal', chat: 'bench', text: 'Radiator is off.', ...more });
