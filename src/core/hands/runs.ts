import { HANDS, isHand } from '../sticking/limbs.ts';
import { oneOf, optionalSwitch } from '../check.ts';
import { checkTimeline } from '../timeline/check-timeline.ts';
import type { Hand } from '../sticking/types.ts';
import type { Stroke, Timeline } from '../timeline/types.ts';

/** A run of strokes by one hand, feet and rests not counting; one that never ends in a loop is counted once round. */
export interface Run {
  length: number;
  /** Ids of its first and last stroke. */
  from: string;
  to: string;
}

/** The longest runs of a limb; feet have none. */
export interface LongestRuns {
  /** By main strokes. */
  longestRun?: Run;
  /** The same with grace notes counted. */
  longestRunWithGraces?: Run;
}

/** The longest runs of one hand, over the seam too where the phrase goes round. */
export function longestRuns(timeline: Timeline, hand: Hand, loop = false): LongestRuns {
  checkTimeline(timeline);
  oneOf('hand', hand, HANDS);
  optionalSwitch('loop', loop);
  const both = timeline.strokes.filter((s) => isHand(s.limb));
  return {
    longestRun: longest(moments(both.filter((s) => s.kind !== 'grace')), hand, loop),
    longestRunWithGraces: longest(moments(both), hand, loop),
  };
}

/** Moments of a hands' line: who strikes, in order; both hands at once lengthen both runs. */
function moments(strokes: Stroke[]): Stroke[][] {
  const found: Stroke[][] = [];
  for (const stroke of strokes) {
    const last = found[found.length - 1];
    const together = last && last[0].tick === stroke.tick && last[0].kind !== 'grace' && stroke.kind !== 'grace';
    if (together) last.push(stroke);
    else found.push([stroke]);
  }
  return found;
}

/** The longest run of one hand in a line of moments, the first of several of one length; round its seam where it loops. */
function longest(line: Stroke[][], hand: Hand, loop: boolean): Run | undefined {
  const steps = loop ? [...line, ...line] : line;
  let best: Run | undefined;
  let run: Run | undefined;
  for (const moment of steps) {
    const stroke = moment.find((s) => s.limb === hand);
    run = stroke && {
      length: Math.min(line.length, (run?.length ?? 0) + 1),
      from: run?.from ?? stroke.id,
      to: stroke.id,
    };
    if (run && run.length > (best?.length ?? 0)) best = run;
  }
  return best;
}
