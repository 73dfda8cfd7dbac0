import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { exactSums } from '../../../nlp/runtime/exact-sums.ts';
import { openNow } from '../../../nlp/runtime/session.ts';

/** The processor's features as the system lists them (Linux on x86: the `flags` of proc_pid_cpuinfo(5)); none elsewhere. */
const flags = existsSync('/proc/cpuinfo') ? /^flags\s*:(.*)$/m.exec(readFileSync('/proc/cpuinfo', 'utf8'))?.[1]?.trim().split(' ') : undefined;

describe('sums of 8-bit products', () => {
  test.skipIf(!flags)('exact ones are asked for where the processor has no 8-bit dot products, and only there', () => {
    const has = flags!.includes('avx512_vnni') || flags!.includes('avx_vnni');
    if (has || flags!.includes('avx2')) expect(exactSums()).toEqual(has ? {} : { extra: { session: { x64quantprecision: '1' } } });
  });
  test('it is tried once', () => expect(exactSums()).toBe(exactSums()));
  test('a model that is damaged is refused', () => expect(() => openNow(new Uint8Array([1, 2, 3]), {})).toThrow());
});
