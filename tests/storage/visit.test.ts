import { describe, expect, it } from 'vitest';
import { openVisit } from '../../src/storage/index.ts';

function memory(): Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
  };
}

describe('what is ticked in a visit', () => {
  it('is there on the next page, in the order of ticking', () => {
    const area = memory();
    const visit = openVisit({ area });
    visit.tick('b', true);
    visit.tick('a', true);
    visit.tick('c', true);
    visit.tick('a', false);
    expect(openVisit({ area }).ticked()).toEqual(['b', 'c']);
    visit.untickAll();
    expect(openVisit({ area }).ticked()).toEqual([]);
  });

  it('is apart for two sites of one host', () => {
    const area = memory();
    openVisit({ area, base: '/one/' }).tick('a', true);
    expect(openVisit({ area, base: '/two/' }).ticked()).toEqual([]);
  });

  it('lasts as long as the page where the browser keeps nothing', () => {
    const refuse = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    const visit = openVisit({ area: { getItem: refuse, setItem: refuse, removeItem: refuse } });
    visit.tick('a', true);
    expect(visit.ticked()).toEqual(['a']);
  });

  it('is nothing where something else is kept', () => {
    const area = memory();
    area.setItem('barwright:/:ticked', '{"a":1}');
    expect(openVisit({ area, base: '/' }).ticked()).toEqual([]);
    area.setItem('barwright:/:ticked', '{{');
    expect(openVisit({ area, base: '/' }).ticked()).toEqual([]);
  });
});
