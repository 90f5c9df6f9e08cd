import { describe, expect, it } from 'vitest';
import { cellsOf, faultText, LIMITS, mirror, parseSticking, printSticking } from '../../src/core/index.ts';
import { stickingOf } from '../helpers/phrases.ts';

const normal = (text: string): string => printSticking(stickingOf(text));

describe('the normal form', () => {
  it.each([
    ['>lR   LL\tR', '>lR LL R'],
    ['  R L  ', 'R L'],
    ['K+R H+L', 'R+K L+H'],
    ['R@snare L@tom1:R', 'R@snare L@tom1:R'],
    ['l@tom1:R@snare: L', 'l@tom1:R@snare L'],
    ['R@snare:>L R@snare:(L) R@snare:-', 'R@snare>L R@snare(L) R@snare-'],
    ['-- --- R-', '- - R-'],
    ['{ R L }4', '{R L}4'],
    ['{R L}04', '{R L}4'],
    ['R L\r\nfeet:K -', 'R L\nfeet: K -'],
    ['R L\n\n', 'R L'],
    ['(lRz@rimshot) ^L', '(lRz@rimshot) ^L'],
    ['R _ _ | L', 'R _ _ | L'],
  ])('%j is printed %j', (text, printed) => expect(normal(text)).toBe(printed));

  it('keeps groups as groups', () => expect(stickingOf('{{R L}2 K}3').hands).toHaveLength(1));

  it('is never refused, also where the text was as long as a text may be', () => {
    const hands = 'R@cowbell '.repeat(340);
    const feet = `feet:${'- '.repeat(340)}`.trimEnd();
    const text = `${hands}\n${feet}`;
    expect(parseSticking(text.padEnd(LIMITS.characters)).ok).toBe(true);
    expect(parseSticking(normal(text)).ok).toBe(true);
  });

  it('counts toward the limit, where it is longer than the text', () => {
    const rests = '- '.repeat(1022);
    const text = `${rests}R@rim\nfeet:${rests}-`;
    expect(text.length).toBe(LIMITS.characters + 4);
    const tight = `${rests}R\nfeet:${rests}-`;
    expect(tight.length).toBe(LIMITS.characters);
    expect(parseSticking(tight)).toMatchObject({ ok: false, fault: { found: '4097 characters' } });
  });
});

describe('faults name the place, what was found and what could stand there', () => {
  it.each([
    ['', 0, 'nothing is written here'],
    ['   ', 0, 'nothing is written here'],
    ['Q', 0, '"Q" is not a stroke; R, L, K, H, a rest "-" or a grace note r, l can stand here'],
    ['R 😀', 2, '"😀" is not a stroke'],
    ['R k', 2, 'feet are capitals'],
    ['>-', 1, '"-" is a rest; R, L, K, H or a grace note r, l can stand here'],
    ['R+-', 2, '"-" is a rest; R, L, K, H or a grace note r, l can stand here'],
    ['(-)', 1, '"-" is a rest; R, L, K, H or a grace note r, l can stand here'],
    ['L >', 2, 'a stroke is missing; R, L, K, H or a grace note r, l can stand here'],
    ['rR', 0, 'the last grace note is played by the hand that is free'],
    ['lrR', 1, 'the last grace note is played by the hand that is free'],
    ['R lK', 3, 'a foot takes no grace note'],
    ['R l', 2, 'a grace note leads to a stroke'],
    ['lrlrL', 3, 'at most 3 grace notes'],
    ['L lR+L', 2, 'both hands strike together'],
    ['R+R', 2, '"R" stands twice'],
    ['R+', 1, 'belongs after it'],
    ['Kz', 1, 'a foot cannot play a buzz'],
    ['>(R)', 0, 'a ghost note cannot be accented'],
    ['(^R)', 1, 'a ghost note cannot be accented'],
    ['L (R', 2, 'is not closed'],
    ['(RL)', 2, 'a ghost note is one stroke'],
    ['_ R', 0, 'none rings here'],
    ['R - _', 4, 'none rings here'],
    ['R- _', 3, 'none rings here'],
    ['R _L', 3, 'fills a slot alone'],
    ['R |  | L', 5, 'this bar is empty'],
    ['| R', 0, 'this bar is empty'],
    ['RLRLR', 4, 'at most 4 strokes'],
    ['R|', 1, 'is not a stroke'],
    ['R@tum', 1, '"@tum" is no surface'],
    ['R@snareL', 1, 'write "@snare:"'],
    ['{R L', 0, 'not closed'],
    ['R}', 1, 'closes nothing'],
    ['{R}', 2, 'how many times'],
    ['{R}0', 3, 'not 0'],
    ['{R}5000', 3, 'not 5000'],
    ['{}4', 0, 'at least one slot'],
    ['{{{R}2}2}2', 2, 'groups nest once'],
    ['{R}2L', 4, 'a space belongs before'],
    ['[5/3:4] R', 3, '"3" is not a note value'],
    ['[16/4:4] R', 1, 'at most 15'],
    ['[4/4:9] R', 5, '1 to 8'],
    ['[4/4] R', 0, 'this is not a head'],
    ['[4/4:4]', 0, 'no slot is written'],
    ['[4/4:4] R L | R', 12, 'here are 2 of 16 sixteenths'],
    ['[2/4:1] R [3/4:1] L R L', 10, "a head stands at a bar's end; here is 1 of 2 quarters"],
    ['R L\nK -', 4, 'a second line begins with "feet:"'],
    ['R\nfeet: K\nR', 10, 'two lines at most'],
    ['R L\nfeet: K', 10, "1 slot and the hands' line 2"],
    ['R L\nfeet: K - K', 14, "3 slots and the hands' line 2"],
    ['R L\nfeet: L -', 10, '"L" is a hand'],
    ['K R\nfeet: K -', 10, '"K" is already struck here'],
    ['KK R\nfeet: -K -', 11, '"K" is already struck here'],
    ['feet: K', 0, "the hands' line comes first"],
    ['{R}4096 R', 0, '4097 slots are too many'],
    ['{R L | }33', 0, '33 bars are too many'],
    ['[1/4:1] {R}33', 0, '33 bars are too many'],
    ['{R}129 | R', 7, '129 slots in one bar are too many'],
  ])('%j at %i: %s', (text, at, message) => {
    const read = parseSticking(text);
    expect(read).toMatchObject({ ok: false, fault: { message: expect.stringContaining(message) } });
    if (!read.ok) expect(read.fault.at).toBe(at);
  });

  it('refuses a text that is too long', () => {
    expect(parseSticking('R '.repeat(2049))).toMatchObject({ ok: false, fault: { at: LIMITS.characters - 1 } });
  });

  it('puts the caret under the place, in its own line', () => {
    const text = 'R L\nfeet: K L';
    const read = parseSticking(text);
    expect(read.ok || faultText(text, read.fault).split('\n').slice(1)).toEqual(['  feet: K L', '          ^']);
  });
});

describe('what is legal', () => {
  it.each([
    'RLRR LRLL', 'lrlR', 'rrL', 'R+L+K+H', 'KK', 'R L |', 'R _ | _ L', 'R {_ L}2',
    '[4/4:4] {R L}8 | [4/4:3] {R L}6', '[2+2+3/8:2] {R L}7', '[4/4:4] {R L R L R L R L R L R L R L R L |}2', 'R@kick',
    'K R\nfeet: - K', 'KK R\nfeet: H -', 'KKK R\nfeet: -H -', '{R}4096', '{R}128 | {R}128',
  ])('%s', (text) => expect(parseSticking(text)).toMatchObject({ ok: true })); // prettier-ignore
});

describe('mirror', () => {
  it.each([
    ['>lR LL R', '>rL RR L'],
    ['l@tom1:R@floor', 'r@tom1:L@floor'],
    ['R@tom1+L K+H', 'R+L@tom1 K+H'],
    ['rlR (L)', 'lrL (R)'],
  ])('%s becomes %s', (text, turned) => expect(printSticking(mirror(stickingOf(text)))).toBe(turned));

  it('turns the kit round by a map of surfaces', () => {
    const kit = { tom1: 'floor', floor: 'tom1' } as const;
    expect(printSticking(mirror(stickingOf('l@tom1:R@floor L K'), kit))).toBe('r@floor:L@tom1 R K');
    expect(() => mirror(stickingOf('R@tom1'), { tom1: 'gong' as 'floor' })).toThrow('surface is "gong"; one of snare');
    expect(printSticking(mirror(stickingOf('R K'), { snare: 'hat' }))).toBe('L@hat K');
    expect(printSticking(mirror(stickingOf('R@tom1'), new Map([['tom1', 'floor']])))).toBe('L@floor');
  });
});

describe('mirror twice', () => {
  it('is the same to the letter, keys in the order of the parser', () => {
    const sticking = stickingOf('>l@tom1:R@floor (L) Rz ^L+K');
    expect(JSON.stringify(mirror(mirror(sticking)))).toBe(JSON.stringify(sticking));
  });
});

describe('cells of a sticking', () => {
  it.each([
    ['>lR LL R', ['>lR LL R']],
    ['{>lR LL R}2 R L R L', ['>lR LL R', '>lR LL R', 'R L R L']],
    ['K {R L L}2', ['K', 'R L L', 'R L L']],
    ['[4/4:1] {R L}2 | {R}1', ['[4/4:1] R L', 'R L |', 'R']],
    ['{{R L}2 K}2', ['{R L}2 K', '{R L}2 K']],
    ['R {_ L}2 _', ['R _', 'L _', 'L _']],
    ['R {| L}2', ['R |', 'L |', 'L']],
    ['R {_ | {L}2}2', ['R _ |', '{L}2 _ |', '{L}2']],
    ['{R}2 _ | L', ['R', 'R _ |', 'L']],
    ['{R L}2\nfeet: K _ _ -', ['R L\nfeet: K _', 'R L']],
  ])('%s', (text, cells) => expect(cellsOf(stickingOf(text)).map(printSticking)).toEqual(cells));
});
