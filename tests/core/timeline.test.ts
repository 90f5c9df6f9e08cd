import { describe, expect, it } from 'vitest';
import { perform, type OrchestrationRule } from '../../src/core/index.ts';
import { phraseOf, timelineOf } from '../helpers/phrases.ts';

const triplets = { meter: '4/4', grid: 3 };
const quarters = (text: string, flams?: 'grace' | 'before' | 'on'): ReturnType<typeof timelineOf> =>
  timelineOf(text, { meter: '4/4', grid: 1, fill: 'rests', flams });
const shape = (t: ReturnType<typeof timelineOf>): string[] => t.strokes.map((s) => `${s.limb}@${s.tick}`);

describe('kinds, one each', () => {
  it.each([
    ['R L', ['single', 'single']],
    ['RR L', ['diddle', 'diddle', 'single']],
    ['RL', ['single', 'single']],
    ['R-R', ['single', 'single']],
    ['RLL', ['single', 'diddle', 'diddle']],
    ['lR', ['grace', 'flam']],
    ['llR', ['grace', 'grace', 'drag']],
    ['lrlR', ['grace', 'grace', 'grace', 'ruff']],
    ['Rz', ['buzz']],
    ['K+H', ['foot', 'foot']],
    ['lRR', ['grace', 'flam', 'diddle']],
  ])('%s', (text, kinds) => expect(quarters(text).strokes.map((s) => s.kind)).toEqual(kinds));
});

describe('strokes', () => {
  it('have ids of bar, slot, part and grace, never of the hand', () => {
    const ids = (lead: 'written' | 'left'): string[] =>
      timelineOf('{>lR LL R+K}4', { ...triplets, lead }).strokes.map((s) => s.id);
    expect(ids('left')).toEqual(ids('written'));
    expect(ids('written').slice(0, 6)).toEqual(['1.0.0g0', '1.0.0', '1.1.0', '1.1.1', '1.2.0', '1.2.0k']);
  });

  it('keep the id of each head when both hands strike and the lead turns', () => {
    const heads = (lead: 'written' | 'left'): string[] =>
      timelineOf('R@tom1+L', { meter: '1/4', grid: 1, lead })
        .strokes.map((s) => `${s.id}:${s.surface}`)
        .sort();
    expect(heads('left')).toEqual(heads('written'));
  });

  it('default to snare, kick and pedal', () => {
    expect(quarters('R L K H').strokes.map((s) => s.surface)).toEqual(['snare', 'snare', 'kick', 'pedal']);
  });

  it('ring through holds, also over a bar line', () => {
    const { strokes } = timelineOf('R _ | _ L', { meter: '2/4', grid: 1 });
    expect(strokes.map((s) => [s.tick, s.length])).toEqual([
      [0, 3 * 20160],
      [3 * 20160, 20160],
    ]);
  });

  it('carry accents on the chord they are written on', () => {
    expect(quarters('>LL L>L').strokes.map((s) => s.accent)).toEqual([true, false, false, true]);
  });

  it('come from both lines', () => {
    const { strokes } = timelineOf('R L\nfeet: K KH', { meter: '2/4', grid: 1 });
    expect(strokes.map((s) => s.id)).toEqual(['1.0.0', '1.0.0fk', '1.1.0', '1.1.0fk', '1.1.1fh']);
  });

  it('name the cell they belong to', () => {
    const { strokes, cells } = timelineOf('{>lR LL R}4', triplets);
    expect(strokes.filter((s) => s.kind === 'flam').map((s) => s.cell)).toEqual([0, 1, 2, 3]);
    expect(cells.map((c) => c.count)).toEqual(['1', '2', '3', '4']);
  });
});

describe('flams written out', () => {
  const cell = '{>lR LL R}4';

  it('before the beat are the bar that a drummer would write by hand', () => {
    const opened = shape(timelineOf(cell, { ...triplets, flams: 'before' }));
    const written = shape(timelineOf('>R LL RL >R LL RL >R LL RL >R LL R', triplets));
    expect(opened.filter((s) => s !== 'L@-3360')).toEqual(written);
    expect(opened[0]).toBe('L@-3360');
  });

  it('on the beat are the bar that a drummer would write by hand', () => {
    const opened = shape(timelineOf(cell, { ...triplets, flams: 'on' }));
    expect(opened).toEqual(shape(timelineOf('L>R LL R L>R LL R L>R LL R L>R LL R', triplets)));
  });

  it('leave no grace note, keep their ids, and shorten the note before', () => {
    const { strokes } = timelineOf(cell, { ...triplets, flams: 'before' });
    expect(strokes.some((s) => s.kind === 'grace')).toBe(false);
    expect(strokes.find((s) => s.id === '1.3.0g0')).toMatchObject({ count: '1 let', opened: true, primary: '1.3.0' });
    expect(strokes.find((s) => s.id === '1.2.0')!.length).toBe(3360);
    expect(strokes[0]).toMatchObject({ bar: 0, slot: 11, count: '4 let' });
  });

  it('take half the gap where a diddle stands before', () => {
    expect(shape(timelineOf('RR lR', { meter: '2/4', grid: 1, flams: 'before' }))).toEqual([
      'R@0',
      'R@10080',
      'L@15120',
      'R@20160',
    ]);
  });

  it('share the half evenly in a drag', () => {
    expect(shape(timelineOf('R llR', { meter: '2/4', grid: 1, flams: 'before' }))).toEqual([
      'R@0',
      'L@10080',
      'L@15120',
      'R@20160',
    ]);
  });

  it('take the kick along under a cymbal grace note', () => {
    const kick = (text: string, flams: 'grace' | 'before' | 'on'): number =>
      timelineOf(text, { meter: '2/4', grid: 1, flams }).strokes.find((s) => s.limb === 'K')!.tick;
    expect(kick('R l@crash:R+K', 'grace')).toBe(20160);
    expect(kick('R l@crash:R+K', 'before')).toBe(10080);
    expect(kick('R l@crash:R+K', 'on')).toBe(20160);
    expect(kick('R lR+K', 'before')).toBe(20160);
    expect(kick('R l@tom1:l@crash:R+K', 'before')).toBe(15120);
  });

  it('leave the kick where another one is struck under the cymbal', () => {
    const { strokes } = quarters('KK+rr@choke:rL-', 'before');
    expect(strokes.filter((s) => s.limb === 'K').map((s) => s.tick)).toEqual([0, 6720]);
  });
});

describe('orchestration', () => {
  const surfaces = (orchestration: Parameters<typeof perform>[1], text = '{>lR LL R}4'): string[] =>
    perform(phraseOf(text, triplets), orchestration)
      .strokes.slice(0, 5)
      .map((s) => s.surface);

  it('moves what a rule names, the last rule that fits winning', () => {
    expect(
      surfaces({
        orchestration: [
          { when: { limb: 'R' }, to: 'floor' },
          { when: { grace: true }, to: 'tom1' },
          { when: { place: 'last' }, to: 'tom2' },
        ],
      }),
    ).toEqual(['tom1', 'floor', 'snare', 'snare', 'tom2']);
  });

  it('goes round a list', () => {
    const { strokes } = perform(phraseOf('{>lR LL R}4', triplets), {
      orchestration: [{ when: { accent: true }, to: ['tom1', 'tom2', 'floor'] }],
    });
    expect(strokes.filter((s) => s.accent).map((s) => s.surface)).toEqual(['tom1', 'tom2', 'floor', 'tom1']);
  });

  it('leaves surfaces that are written', () => {
    expect(surfaces({ orchestration: [{ when: { limb: 'R' }, to: 'floor' }] }, '{>lR@rim LL R}4')[1]).toBe('rim');
  });

  it('throws for a surface or a test that does not exist', () => {
    expect(() => surfaces({ orchestration: [{ when: { hand: 'R' } as object, to: 'tom1' }] })).toThrow('"hand"');
    expect(() => surfaces({ orchestration: [{ when: {}, to: 'gong' as 'snare' }] })).toThrow(RangeError);
    expect(() => surfaces({ orchestration: [{ when: { place: 0 }, to: 'tom1' }] })).toThrow('place is 0');
    expect(() => surfaces({ orchestration: [{ when: {}, to: [] }] })).toThrow('at least one');
    expect(() => surfaces({ orchestration: [{ to: 'tom1' } as unknown as OrchestrationRule] })).toThrow(RangeError);
  });
});
