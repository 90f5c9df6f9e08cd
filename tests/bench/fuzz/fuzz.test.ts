import { describe, expect, it } from 'vitest';
import { attackOf, launch } from './attack.ts';
import { ATTACKS } from './index.ts';

describe('made-up input', () => {
  it.each(ATTACKS)('of the attack "$name" breaks no rule', async (attack) => {
    const { tries, failures } = await launch(attack, false);
    expect(tries).toBe(attack.tries.short);
    expect(failures).toEqual([]);
  });

  it('is the same each time, and what is wrong or thrown is told with it', async () => {
    const seen: number[] = [];
    const attack = attackOf('a trial', { short: 3, long: 5 }, (random, about) => {
      const drawn = random();
      about(`draw ${seen.length}`);
      seen.push(drawn);
      if (seen.length % 2 === 0) throw new Error('even');
      return seen.length % 3 === 0 ? 'third' : undefined;
    });
    expect((await launch(attack, false)).failures).toEqual(['"draw 1": threw Error: even', '"draw 2": third']);
    expect((await launch(attack, true)).tries).toBe(5);
    expect(seen.slice(3, 6)).toEqual(seen.slice(0, 3));
  });
});
