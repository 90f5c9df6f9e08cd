import { describe, expect, it } from 'vitest';
import {
  checkPhrase,
  layPhrase,
  perform,
  printSlot,
  readPhrase,
  type Lead,
  type Phrase,
  type PhraseRequest,
  type PhraseTextRequest,
} from '../../src/core/index.ts';
import { phraseOf, refusalOf, stickingOf, timelineOf } from '../helpers/phrases.ts';

const FLAM_DRAG = '>lR LL R';
const times = (n: number, ...rest: string[]): { id: string; text: string }[] => [
  { id: 'flam-drag', text: `{${FLAM_DRAG}}${n}` },
  ...rest.map((text) => ({ id: text, text })),
];
const in44 = { meter: '4/4', grid: 4 };

describe('bars that do not add up', () => {
  it.each([
    [times(5), 'stops on 4 &; the a of 4 is empty: 15 of 16 sixteenths'],
    [times(4), 'stops on 3 a; from beat 4 on, 4 sixteenths are empty: 12 of 16 sixteenths'],
    [times(4, 'lR'), 'stops on 4; from the e of 4 on, 3 sixteenths are empty: 13 of 16 sixteenths'],
    [times(6), 'bar 2: stops on 1 e; from the & of 1 on, 14 sixteenths are empty: 2 of 16 sixteenths'],
  ])('says where', (cells, message) => expect(refusalOf(cells, in44)).toBe(message));

  it('points to the first empty slot', () => {
    expect(readPhrase({ cells: times(5), ...in44 })).toMatchObject({ ok: false, fault: { at: 15 } });
  });

  it('pads them with rests where that is asked for', () => {
    const phrase = phraseOf(times(5), { ...in44, fill: 'rests' });
    expect(phrase.slots).toHaveLength(16);
    expect(phrase.slots[15]).toMatchObject({ cell: -1, hands: { parts: [[]] } });
    expect(phrase.cells).toHaveLength(5);
  });

  it.each([
    ['R L | R L', { meter: '4/4', grid: 1 }, "a bar line stands at a bar's end; here are 2 of 4 quarters"],
    ['R L R L [3/4:1] R L R', { meter: '5/4', grid: 1 }, "a head stands at a bar's end; here are 4 of 5 quarters"],
    ['[4/4:3] R', in44, 'the text begins with [4/4:3], but 4/4 with 4 slots a beat was asked for'],
    ['R', {}, 'how long is a bar?'],
    ['R', { meter: '4/4' }, 'how long is a bar?'],
    ['R', { meter: '4/3', grid: 4 }, '"3" is not a note value'],
    ['R', { meter: '4/4', grid: 9 }, 'grid is 9; 1 to 8'],
    ['R', { ...in44, pickup: 17 }, 'pickup is 17; 0 to 16'],
    ['R', { ...in44, pickup: '1' as unknown as number }, 'pickup is "1"; 0 to 16'],
    ['R', { ...in44, pickup: -1 }, 'pickup is -1'],
    ['R', { ...in44, pickup: 1.5 }, 'pickup is 1.5'],
    ['R', { ...in44, pickup: 1 }, 'the pickup leads to a bar, and none follows'],
    ['RLRL', { meter: '1/16', grid: 8 }, 'cannot be split evenly into 4'],
    ['{R}33', { meter: '1/4', grid: 1 }, 'at most 32 bars'],
  ])('%s %j', (text, how, message) => expect(refusalOf(text, how)).toContain(message));

  it('says which cell holds a bad text', () => {
    expect(readPhrase({ cells: times(1, 'R Q'), ...in44 })).toMatchObject({ ok: false, fault: { cell: 1, at: 2 } });
  });

  it('refuses nothing at all', () => {
    expect(layPhrase({ cells: [], ...in44 })).toMatchObject({ ok: false });
  });

  it('throws for a lead that does not exist', () => {
    const cells = [{ id: 'a', sticking: stickingOf('R') }];
    expect(() => layPhrase({ cells, meter: '1/4', grid: 1, lead: 'both' as Lead })).toThrow(RangeError);
  });

  it('throws for what is no request, no cell and no phrase', () => {
    for (const wrong of [{}, { cells: null }, { cells: [null] }, { cells: [{ id: 'a' }] }])
      expect(() => layPhrase({ meter: '1/4', grid: 1, ...wrong } as unknown as PhraseRequest)).toThrow(RangeError);
    expect(() => layPhrase(undefined as unknown as PhraseRequest)).toThrow('what is asked for is undefined');
    expect(() => readPhrase({} as unknown as PhraseTextRequest)).toThrow(RangeError);
    expect(() => perform({ ok: true } as unknown as Phrase)).toThrow('a phrase, as layPhrase gives it');
  });
});

describe('heads', () => {
  it('change meter and grid at a bar line and hold from there on', () => {
    const phrase = phraseOf('[4/4:3] {R L}6 | [3/4:2] {R L}3 {R L}3');
    expect(phrase.bars.map((b) => [b.meter, b.grid, b.slots, b.tick])).toEqual([
      ['4/4', 3, 12, 0],
      ['3/4', 2, 6, 80640],
      ['3/4', 2, 6, 80640 + 60480],
    ]);
  });

  it('need no other meter where the text begins with one, and may agree with it', () => {
    expect(phraseOf('[4/4:1] R L R L').bars).toHaveLength(1);
    expect(phraseOf('[4/4:1] R L R L', { meter: '4/4', grid: 1 }).bars).toHaveLength(1);
  });
});

describe('leads', () => {
  const led = (lead: Lead, cells: { id: string; text: string }[]): string =>
    phraseOf(cells, { meter: '1/4', grid: 1, lead })
      .slots.map((s) => (s.hands.kind === 'slot' ? printSlot(s.hands) : '_'))
      .join(' ');
  const texts = (...all: string[]): { id: string; text: string }[] => all.map((text) => ({ id: text, text }));

  it.each([
    ['written', texts('>lR LL R', 'L'), '>lR LL R L'],
    ['left', texts('>lR LL R', 'L', 'K'), '>rL RR L R K'],
    ['alternating', [{ id: 'f', text: '{>lR LL R}3' }], '>lR LL R >rL RR L >lR LL R'],
    ['alternating', texts('R L L', 'K', 'R L L'), 'R L L K L R R'],
    ['alternating', texts('R L L', 'lR', 'R L L'), 'R L L lR L R R'],
    ['alternating', texts('R L L', 'L', 'R L L'), 'R L L R L R R'],
    ['alternating', texts('R L R L', 'R', 'R L R L'), 'R L R L R L R L R'],
    ['alternating', texts('LL', 'R L'), 'LL R L'],
    ['alternating', texts('L R', 'L R'), 'L R R L'],
    ['alternating', texts('K', 'R', 'R'), 'K R L'],
    ['alternating', texts('R L', 'R+L', 'R L'), 'R L R+L L R'],
    ['alternating', texts('- R L', 'R L'), '- R L L R'],
  ])('%s %#', (lead, cells, played) => expect(led(lead as Lead, cells)).toBe(played));

  it('turn the lead by cells, not by repeats inside one', () => {
    expect(led('alternating', texts('R L R L', 'R L R L'))).toBe('R L R L L R L R');
  });
});

describe('pickups', () => {
  const early = { ...in44, pickup: 1 };
  const cells = [{ id: 'kick', text: 'KK' }, ...times(5, 'L')];

  it('stand in bar 0, counted to the end of a bar, before tick 0', () => {
    const timeline = timelineOf(cells, early);
    expect(timeline.strokes.slice(0, 2).map((s) => [s.bar, s.slot, s.count, s.tick])).toEqual([
      [0, 15, '4 a', -5040],
      [0, 15, '4 a', -2520],
    ]);
    expect(timeline).toMatchObject({ ticks: 80640, pickupTicks: 5040, bars: [{ tick: 0, slots: 16 }] });
  });

  it('may be a whole bar', () => {
    expect(timelineOf('{R}8', { meter: '4/4', grid: 1, pickup: 4 }).strokes[0].tick).toBe(-80640);
  });
});

describe('the check pattern', () => {
  it('is a bar of single strokes in the same meter and grid', () => {
    const plain = checkPhrase(phraseOf(times(4), { meter: '4/4', grid: 3 }));
    expect(plain.slots.map((s) => s.hands.kind === 'slot' && printSlot(s.hands)).join(' ')).toBe(
      'R L R L R L R L R L R L',
    );
    expect(checkPhrase(plain, 'L').slots[0].hands).toMatchObject({ parts: [[{ limb: 'L' }]] });
  });
});
