/** A letter or sign of sticking text, and a bar that shows it. */
export interface Sign {
  sign: string;
  /** What it is, as the end of "… is". */
  says: string;
  sticking: string;
  meter: string;
  grid: number;
}

const bar = (sign: string, says: string, sticking: string, grid = 2, meter = '2/4'): Sign => ({
  sign,
  says,
  sticking,
  meter,
  grid,
});

/** The letters and signs of sticking text, the plainest first. Every bar of it is full. */
export const ALPHABET: readonly Sign[] = [
  bar('R L', 'right hand, left hand: capitals strike, and each stands in a slot of its own', 'R L R L'),
  bar('-', 'a rest', 'R L - R'),
  bar('LL', 'letters without a space share one slot evenly: a diddle, up to four of them', 'R LL R L'),
  bar('lR', 'a flam: the small letter is the grace note, by the other hand', 'lR L rL R'),
  bar('llR', 'a drag: two grace notes; three are a four-stroke ruff', 'llR L rrL R'),
  bar('>', 'an accent', '>R L R >L'),
  bar('^', 'a heavy accent', '^R L R L'),
  bar('(L)', 'a ghost note', '>R (L) (R) (L)'),
  bar('_', 'the stroke before rings on, over the beat too', 'R L _ R'),
  bar('z', 'a buzz', 'Rz Lz R L'),
  bar('K H', 'the feet: bass drum, hi-hat pedal', 'R K L H'),
  bar('+', 'together', 'R+K L R+L L'),
  bar('@', 'where it is struck; without it the hands are on the snare', 'R@hat L@tom1 R@floor L'),
  bar('{ }4', 'what stands in braces comes four times', '{R L L}4', 3, '4/4'),
  bar('|', 'a bar line; whether it stands at a bar’s end is checked', 'R L R L | R R L L'),
  bar(
    '[ : ]',
    'meter and slots a beat, in front or at a bar line, where a bar has its own',
    '[6/8:3] R L R L R L',
    3,
    '6/8',
  ),
  bar('feet:', 'a second line lays the feet under the hands, slot by slot', 'R L R L\nfeet: K - H -'),
];
