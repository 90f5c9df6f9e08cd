/** What a question may ask a bar, and which attributes say it more exactly. */
export const QUESTION_RULES = {
  'hand-at': { needs: ['at'], may: ['in'], says: 'which hand plays on the count "at", in bar "in" (1 when left out)' },
  'cell-start': { needs: ['of'], may: [], says: 'on which count cell number "of" starts' },
  strokes: {
    needs: ['of'],
    may: [],
    says: 'how many strokes there are of right, left, hands, feet, all, accents, flams, diddles or graces',
  },
  'longest-run': {
    needs: [],
    may: ['of'],
    says: 'how many strokes in a row one hand has to play at most, grace notes counted; "of" is right or left',
  },
  slots: { needs: [], may: [], says: 'how many slots the bar has' },
  'cell-slots': { needs: ['cell'], may: [], says: 'how many slots the cell takes' },
  'cells-fit': { needs: ['cell'], may: [], says: 'how many of the cell fit into the bar' },
  'slots-left': {
    needs: ['cell'],
    may: [],
    says: 'how many slots are left when as many of the cell as fit stand in the bar',
  },
  'bars-home': { needs: ['cell'], may: [], says: 'after how many bars the cell, repeated, starts on beat 1 again' },
  'cells-home': { needs: ['cell'], may: [], says: 'after how many of the cell it starts on beat 1 again' },
} as const satisfies Record<string, { needs: readonly string[]; may: readonly string[]; says: string }>;

/** What a question may ask a bar. */
export type QuestionKind = keyof typeof QUESTION_RULES;

/** The kinds of question, in the order of the documentation. */
export const QUESTION_KINDS = Object.keys(QUESTION_RULES) as [QuestionKind, ...QuestionKind[]];

/** What `strokes` can count. */
export const STROKE_COUNTS = [
  'right',
  'left',
  'hands',
  'feet',
  'all',
  'accents',
  'flams',
  'diddles',
  'graces',
] as const;

/** One of them. */
export type StrokeCount = (typeof STROKE_COUNTS)[number];
