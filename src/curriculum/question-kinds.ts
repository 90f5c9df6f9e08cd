import { SURFACES, type Surface } from '../core/index.ts';

/** Which attributes a kind of question needs, which it may have, and what it asks. */
interface QuestionRule {
  needs: readonly string[];
  may: readonly string[];
  says: string;
}

/** What a question may ask a bar, and which attributes say it more exactly. */
export const QUESTION_RULES = {
  'hand-at': { needs: ['at'], may: ['in'], says: 'which hand plays on the count "at", in bar "in" (1 when left out)' },
  'grace-at': { needs: ['at'], may: ['in'], says: 'which hand plays the grace note of the flam on the count "at"' },
  'motion-at': {
    needs: ['at'],
    may: ['in', 'of'],
    says: 'whether the stroke on "at" is a full, down, tap or up stroke, the bar going round; "of" is right or left where both play',
  },
  'kind-at': {
    needs: ['at'],
    may: ['in', 'of'],
    says: 'whether a flam, a drag, a diddle, a buzz, a ghost note or a single stands on "at", or a foot, or nothing',
  },
  'surface-at': {
    needs: ['at'],
    may: ['in', 'of'],
    says: 'what is struck on "at"; "of" says by whom where several play: right, left, kicks or graces',
  },
  'place-at': {
    needs: ['at'],
    may: ['in'],
    says: 'which slot of its cell stands on "at": 1 for the first',
  },
  'cell-start': { needs: ['of'], may: [], says: 'on which count cell number "of" starts' },
  'slot-name': { needs: ['of'], may: ['in'], says: 'the count of slot number "of" of a bar' },
  'count-after': {
    needs: ['at', 'of'],
    may: ['in'],
    says: 'on which count you are "of" slots after "at"',
  },
  next: {
    needs: ['of'],
    may: ['at', 'in'],
    says: 'on which count the next of these strokes comes after "at", or the first one where "at" is left out',
  },
  gap: {
    needs: ['at', 'of'],
    may: ['in'],
    says: 'how many slots it is from the last stroke on "at" to the next of these strokes; "of" may also be cells',
  },
  'rests-after': {
    needs: ['at'],
    may: ['in', 'of'],
    says: 'how many slots stay empty after "at"; with "of" only such strokes are listened to',
  },
  strokes: {
    needs: ['of'],
    may: ['in'],
    says: 'how many of these strokes there are, in bar "in" or in all',
  },
  'longest-run': {
    needs: [],
    may: ['of', 'loop'],
    says: 'how many strokes in a row one hand has to play at most, grace notes counted; "of" is right or left',
  },
  slots: { needs: [], may: ['in', 'over'], says: 'how many slots a bar has, or as many bars as "over" says' },
  'bar-seconds': { needs: ['of'], may: ['in'], says: 'how many seconds a bar lasts at "of" beats a minute' },
  'cell-slots': { needs: ['cell'], may: [], says: 'how many slots the cell takes' },
  'cells-fit': { needs: ['cell'], may: ['over'], says: 'how many of the cell fit into the bar, or into "over" bars' },
  'slots-left': {
    needs: ['cell'],
    may: ['over'],
    says: 'how many slots are left when as many of the cell as fit stand in the bar, or in "over" bars',
  },
  'bars-home': { needs: ['cell'], may: [], says: 'after how many bars the cell, repeated, starts on beat 1 again' },
  'cells-home': { needs: ['cell'], may: [], says: 'after how many of the cell it starts on beat 1 again' },
  'longer-gaps': {
    needs: ['of'],
    may: [],
    says: 'how many gaps are the longer ones when "of" strokes are spread over the bar as evenly as whole slots allow',
  },
  orders: {
    needs: [],
    may: ['cell'],
    says: 'in how many different orders the cells of the bar can stand; "cell" is the one that must come first',
  },
} as const satisfies Record<string, QuestionRule>;

/** What a question may ask a bar. */
export type QuestionKind = keyof typeof QUESTION_RULES;

/** The kinds of question, in the order of the documentation. */
export const QUESTION_KINDS = Object.keys(QUESTION_RULES) as [QuestionKind, ...QuestionKind[]];

/** What strokes can be called in `of`, besides the surface they strike. */
export const STROKE_COUNTS = [
  'right',
  'left',
  'hands',
  'feet',
  'kicks',
  'all',
  'starts',
  'accents',
  'ghosts',
  'flams',
  'diddles',
  'graces',
  'full',
  'down',
  'tap',
  'up',
] as const;

/** One of them. */
export type StrokeCount = (typeof STROKE_COUNTS)[number];

/** Whether a word of `of` is a surface of the kit. */
export const isSurface = (word: unknown): word is Surface => (SURFACES as readonly unknown[]).includes(word);
