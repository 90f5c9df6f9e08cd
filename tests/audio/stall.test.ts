import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { watchStall } from '../../src/audio/stall.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A mark set by hand, and what was told of it. */
function watched() {
  const world = { mark: 0, told: [] as boolean[] };
  const end = watchStall(
    () => world.mark,
    (stalled) => world.told.push(stalled),
  );
  return { world, end };
}

test('what moves is left alone', () => {
  const { world } = watched();
  for (let second = 0; second < 20; second += 1) {
    world.mark += 1;
    vi.advanceTimersByTime(1000);
  }
  expect(world.told).toEqual([]);
});

test('what stands still for 5 s is told once, and told again when it moves', () => {
  const { world } = watched();
  vi.advanceTimersByTime(4999);
  expect(world.told).toEqual([]);
  vi.advanceTimersByTime(20_000);
  expect(world.told).toEqual([true]);
  world.mark += 1;
  vi.advanceTimersByTime(500);
  expect(world.told).toEqual([true, false]);
});

test('nothing is told once the watch has ended', () => {
  const { world, end } = watched();
  end();
  vi.advanceTimersByTime(20_000);
  expect(world.told).toEqual([]);
});
