import { vi } from 'vitest';
import type { CountSystem } from '../../src/core/index.ts';

/** What a school may set that is a constant of the build. */
export interface SchoolSets {
  barWord?: 'bar' | 'measure';
  counting?: CountSystem;
}

/**
 * Loads modules as they are where a site is built for a school with these settings, which are constants of the build: the
 * modules are loaded anew, and once more for whoever asks for them next.
 */
export async function atSchool<T>({ barWord, counting }: SchoolSets, load: () => Promise<T>): Promise<T> {
  vi.resetModules();
  if (barWord) vi.stubGlobal('__BAR_WORD__', barWord);
  if (counting) vi.stubGlobal('__COUNTING__', counting);
  try {
    return await load();
  } finally {
    vi.unstubAllGlobals();
    vi.resetModules();
  }
}
