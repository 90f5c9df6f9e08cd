import { describe, expect, it } from 'vitest';
import { leadsOf } from '../../components/lesson/bars.ts';
import { perform } from '../../src/core/index.ts';
import { phraseOf } from '../helpers/phrases.ts';

function bar(text: string): Parameters<typeof leadsOf>[0] {
  const phrase = phraseOf(text, { meter: '4/4', grid: 3 });
  return { phrase, timeline: perform(phrase) };
}

describe('the leads a bar offers', () => {
  it('are all three where cells can alternate, its own first', () => {
    expect(leadsOf(bar('{>lR LL R}4'), 'left')).toEqual(['left', 'right', 'alternating']);
  });
  it('leave out the alternating one where there is one cell', () => {
    expect(leadsOf(bar('R L R L R L R L R L R L'), 'right')).toEqual(['right', 'left']);
  });
  it('are its own alone on the kit, where the other lead would cross the arms', () => {
    expect(leadsOf(bar('{>l@tom1:R LL R}4'), 'right')).toEqual(['right']);
  });
});
