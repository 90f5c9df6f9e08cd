import { describe, expect, it } from 'vitest';
import {
  perform,
  piecesOf,
  readPhrase,
  scoreBars,
  valueOf,
  writeBars,
  writtenNotes,
  type VoicePart,
  type WrittenBar,
} from '../../../src/core/index.ts';
import { claimOf } from '../../../src/words/proof.ts';
import { CASES, rudimentCases } from '../../engraving/cases.ts';

function written(text: string, meter?: string, grid?: number, pickup?: number): WrittenBar[] {
  const read = readPhrase({ cells: [{ id: 'a', text }], meter, grid, pickup });
  if (!read.ok) throw new Error(read.fault.message);
  const timeline = perform(read.phrase);
  return writeBars(scoreBars(timeline), timeline.strokes, { staff: 'pad', slashed: false });
}

/** A voice in short: `8 16 16 8`, a rest with r, a dot, a tie as ~, a tuplet's figure at its end. */
function inShort(part: VoicePart): string {
  const symbols = part.symbols.map(
    ({ kind, value, tied }) => `${kind === 'rest' ? 'r' : ''}${value.base}${value.dots ? '.' : ''}${tied ? '~' : ''}`,
  );
  return [...symbols, ...part.tuplets.map(({ figure, bracket }) => (bracket ? `[${figure}]` : `(${figure})`))].join(
    ' ',
  );
}

const beats = (bars: WrittenBar[], voice = 0): string[] =>
  bars.flatMap((bar) => bar.fragments.map(({ voices }) => (voices[voice] ? inShort(voices[voice]) : '')));

describe(claimOf('note-values'), () => {
  it.each([
    ['>lR LL R', '1/4', 3, ['8 16 16 8 (3)']],
    ['R - - L R L - - - - R - - R - L', '4/4', 4, ['8. 16', '16 8.', 'r8 8', 'r16 8 16']],
    ['R - - - - L - - R L - R - L L -', '4/4', 4, ['4', 'r16 8.', '16 8 16', 'r16 16 8']],
    ['R - L - R - - - L R L -', '4/4', 3, ['4 8 [3]', 'r8 4 [3]', 'r4 8 [3]', '8 4 [3]']],
    ['R - - L - -', '1/4', 6, ['8 8']],
    ['R - L - R -', '1/4', 6, ['8 8 8 (3)']],
    ['R L R L R', '1/4', 5, ['16 16 16 16 16 (5)']],
    ['R L R L R L R', '1/4', 7, ['16 16 16 16 16 16 16 (7)']],
    ['llRLR >L', '1/4', 2, ['16 16 16 8 [3]']],
    ['RR LL >R -', '1/4', 4, ['32 32 32 32 8']],
    ['R- -L', '1/4', 2, ['16 r16 r16 16']],
    ['R L R L R L', '6/8', 3, ['8 8 8', '8 8 8']],
    ['R L R L', '6/8', 2, ['8. 8.', '8. 8.']],
    ['R L R L R L R L R L', '6/8', 5, ['8 8 8 8 8 (5)', '8 8 8 8 8 (5)']],
    ['R L R L R L L', '2+2+3/8', 1, ['8 8', '8 8', '8 8 8']],
    ['R - R - R - -', '2+2+3/8', 1, ['4', '4', '4.']],
    ['R L R L R', '2+3/16', 1, ['16 16', '16 16 16']],
    ['R L R - R L R L R L', '2+3/16', 2, ['32 32 16', '32 32 32 32 32 32']],
    ['R L R L R', '5/8', 1, ['8 8', '8 8 8']],
    ['R L R L R L', '2/2', 3, ['4 4 4 [3]', '4 4 4 [3]']],
  ] as const)('%s in %s, %i a beat', (text, meter, grid, expected) => {
    expect(beats(written(text, meter, grid))).toEqual(expected);
  });

  it('writes held notes as long as they ring, tied where no value is so long', () => {
    expect(beats(written('Rz _ _ _ _ _ _ _', '4/4', 2))).toEqual(['1', '', '', '']);
    expect(beats(written('Rz _ _ _ L _ _ _', '4/4', 2))).toEqual(['2', '', '2', '']);
    expect(beats(written('L Rz _ _ _ L R L', '4/4', 2))).toEqual(['8 8~', '4~', '8 8', '8 8']);
    expect(beats(written('R L R L R L Rz _ | _ L R L R L R L', '4/4', 2)).slice(3, 5)).toEqual(['4~', '8 8']);
  });

  it('ties a note out of a triplet inside a slot', () => {
    expect(beats(written('RLR _ L R', '2/4', 2))).toEqual(['16 16 16~ 8 [3]', '8 8']);
  });

  it('rests for half a bar and for a whole one with one sign', () => {
    expect(beats(written('R L R L - - - - | - - - - - - - -', '4/4', 2))).toEqual([
      '8 8',
      '8 8',
      'r2',
      '',
      'r1',
      '',
      '',
      '',
    ]);
    expect(beats(written('R L - - - - R L', '4/4', 2))).toEqual(['8 8', 'r4', 'r4', '8 8']);
  });

  it('writes no note and no rest over the start of a line', () => {
    const broken = (text: string, ...at: number[]): string[] => {
      const read = readPhrase({ cells: [{ id: 'a', text }], meter: '4/4', grid: 2 });
      if (!read.ok) throw new Error(read.fault.message);
      const timeline = perform(read.phrase);
      return beats(
        writeBars(scoreBars(timeline), timeline.strokes, {
          staff: 'pad',
          slashed: false,
          breaks: new Set(at.map((beat) => beat * 20160)),
        }),
      );
    };
    expect(broken('R L R L - - - -', 1, 2, 3)).toEqual(['8 8', '8 8', 'r4', 'r4']);
    expect(broken('R L R L - - - -', 2)).toEqual(['8 8', '8 8', 'r2', '']);
    expect(broken('- - - - - - - -', 2)).toEqual(['r2', '', 'r2', '']);
    expect(broken('Rz _ _ _ _ _ _ _', 2)).toEqual(['2~', '', '2', '']);
    expect(broken('Rz _ _ _ L _ _ _', 1, 2, 3)).toEqual(['4~', '4', '4~', '4']);
  });

  it('lets a pickup begin with its first stroke', () => {
    expect(beats(written('KK R L R L R L R L R L R L R L R L', '4/4', 4, 1))[0]).toBe('32 32');
  });

  it('writes what is shorter than every value as the shortest', () => {
    expect(piecesOf(0, 100, 'free')).toEqual([{ offset: 0, ticks: 100, value: { base: 128, dots: 0 } }]);
    expect(valueOf(20160)).toEqual({ base: 4, dots: 0 });
  });
});

describe('voices', () => {
  it('keeps a bar with no foot under a hand in one voice, stems up, beamed through the kick', () => {
    const [bar] = written('R L K R L K R L K R L K', '4/4', 3);
    for (const { voices } of bar.fragments) {
      expect(voices.map(({ stem }) => stem)).toEqual([1]);
      expect(voices[0].beams.map(({ notes }) => notes)).toEqual([[0, 1, 2]]);
    }
  });

  it('parts hands and feet where a foot sounds under a hand, without filler rests', () => {
    const bars = written('R+K L R L R L R+K L', '4/4', 2);
    expect(beats(bars)).toEqual(['8 8', '8 8', '8 8', '8 8']);
    expect(beats(bars, 1)).toEqual(['4', '', '', '4']);
  });

  it('always parts a groove', () => {
    const bars = written('R@hat K R@hat L R@hat K R@hat L', '4/4', 2);
    expect(bars[0].fragments.every(({ voices }) => voices.length === 2)).toBe(true);
  });

  it('shows a tuplet of the feet that no hand shows', () => {
    const bars = written('R@ride+K - - R@ride - K R@ride L R@ride+K R@ride - -', '4/4', 3);
    expect(beats(bars, 1)).toEqual(['4', 'r4 8 [3]', '8', '']);
  });
});

describe('beams', () => {
  const pieces = [...Object.entries(CASES).map(([name, make]) => [name, make()] as const), ...rudimentCases()];

  it.each(pieces)('%s: none leaves its beat, none touches a quarter or a rest at its end', (_, { timeline }) => {
    for (const bar of writeBars(scoreBars(timeline), timeline.strokes, { staff: 'pad', slashed: false }))
      for (const fragment of bar.fragments)
        for (const { symbols, beams } of fragment.voices)
          for (const { notes } of beams)
            for (const at of notes) {
              const { kind, value, tick, ticks } = symbols[at];
              expect(kind).toBe('note');
              expect(value.base).toBeGreaterThan(4);
              expect(tick).toBeGreaterThanOrEqual(fragment.tick);
              expect(tick + ticks).toBeLessThanOrEqual(fragment.tick + fragment.ticks);
            }
  });

  it.each(pieces)('%s: what a single voice writes fills its bar exactly', (_, { timeline }) => {
    for (const bar of writeBars(scoreBars(timeline), timeline.strokes, { staff: 'pad', slashed: false })) {
      const [first, second] = bar.fragments[0].voices;
      if (second || bar.number === 0) continue;
      expect(first.stem).toBe(1);
      const ticks = bar.fragments.flatMap(({ voices }) => voices[0].symbols).reduce((sum, s) => sum + s.ticks, 0);
      expect(ticks).toBe(bar.ticks);
    }
  });

  it('keeps the beam that a diddle adds inside its slot', () => {
    const [bar] = written('RR LL R LL R L R L R L R L R L R L', '4/4', 4);
    expect(bar.fragments[0].voices[0].beams[0].joins).toEqual([Infinity, 2, Infinity, 2, 2, Infinity]);
  });

  it('parts eight 32nds in the middle of the beat, but for one line', () => {
    const [bar] = written('R L R L R L R L', '1/4', 8);
    expect(bar.fragments[0].voices[0].beams[0].joins).toEqual([3, 3, 3, 1, 3, 3, 3]);
  });
});

describe('the entry to written notes', () => {
  it('gives every note its heads with their places, the lowest first', () => {
    const read = readPhrase({ cells: [{ id: 'a', text: 'R@crash+K L@floor+R' }], meter: '2/4', grid: 1 });
    if (!read.ok) throw new Error(read.fault.message);
    const bars = writtenNotes(perform(read.phrase), { staff: 'kit' });
    const notes = bars[0].fragments.flatMap(({ voices }) => voices[0].symbols);
    const places = notes.map(({ heads }) => heads?.map(({ place }) => `${place.step}${place.octave} ${place.head}`));
    expect(places).toEqual([['A5 x'], ['A4 black', 'C5 black']]);
  });

  it.each([
    [null, {}],
    [{}, {}],
    [undefined, { staff: 'pad' as const }],
  ])('refuses %o as a timeline', (timeline, options) => {
    expect(() => writtenNotes(timeline as never, options)).toThrow(RangeError);
  });

  it('refuses a staff and a way of writing diddles that do not exist', () => {
    const read = readPhrase({ cells: [{ id: 'a', text: 'R L' }], meter: '2/4', grid: 1 });
    if (!read.ok) throw new Error(read.fault.message);
    const timeline = perform(read.phrase);
    expect(() => writtenNotes(timeline, { staff: 'grand' as never })).toThrow(/grand/);
    expect(() => writtenNotes(timeline, { diddles: 'dots' as never })).toThrow(/dots/);
  });
});
