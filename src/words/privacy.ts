/** What the page on privacy says. Parents read it: short words, nothing promised that is not so. */
import { inSentence } from './grammar.ts';
import { SCHOOL } from './site.ts';

/** Each thing that the browser keeps, by its name in the stored shape; a test holds the two together. */
export const KEPT = {
  exercises: 'The tempo and the lead you chose, for each thing you played.',
  site: 'How you like things played:',
  done: 'Which lessons you marked as done.',
  last: 'Which lesson you read last, so that the first page can take you back to it.',
  puzzles: 'Which puzzles you answered, on which day, and how it went.',
} as const;

/** The settings in that, by their names in the stored shape. */
export const SETTINGS_KEPT = {
  flamMs: 'flam width',
  flams: 'how flams are written',
  swing: 'swing',
  click: 'the metronome',
  countIn: 'the count-in',
  check: 'the check pattern',
  loop: 'repeating',
  heard: 'which hands are heard',
  heights: 'stroke heights',
  counts: 'the count in large figures',
} as const;

/**
 * The text of the page.
 *
 * @example PRIVACY_PAGE.idea // 'Nothing you do here leaves this device.'
 */
export const PRIVACY_PAGE = {
  title: 'Privacy',
  description: 'What this site keeps, where it stays, how to see it and how to delete it.',
  idea: 'Nothing you do here leaves this device.',
  leaves: 'What leaves this device',
  nothing: `No cookies, no accounts, no counting of visitors. The pages ask no other site for anything. Nobody at the ${SCHOOL} can see what you play, how fast, or what you have done.`,
  logs: 'One thing no site can do without: the web server that holds these pages is asked for each of them. Whoever runs it may keep its ordinary log, which can hold the address of each page, with the words searched for and the filters chosen, the time, and the network address (IP) that asked. It holds no names, and nothing that stands behind a # in an address, such as the sticking in a link. Ask the school whether it is kept, and for how long.',
  stays: 'What stays in this browser',
  staysWhy: 'So that an exercise opens as you left it, your browser keeps:',
  noMore:
    'The exercises you tick for a sheet are kept until you close the tab. That is all. No name, no age, no sound, no list of what you looked for. A text found there that the site cannot read is set aside, and deleted only when you ask for it. As with every site, the browser may also keep copies of pages so that they open faster.',
  own: 'See it, save it, delete it',
  noScript:
    'Showing and deleting it on this page needs JavaScript, which is off or did not load. You can delete it in the browser’s own settings: look for “site data” or “browsing data”, find this site in the list, and delete what it holds. In a private window everything goes when the window is closed.',
  other:
    'It is there for everybody who uses this browser on this device, and for nobody else. Another device begins with nothing; open a saved file there to go on where you were.',
};

/** What stands on the part of the page that shows and deletes. */
export const OWN_DATA = {
  looking: 'Looking …',
  nothing: 'This browser keeps nothing of this site now.',
  keeps: 'This browser keeps now:',
  blocked: 'This browser lets the site keep nothing, so there is nothing to show or to delete.',
  word: 'Show it word for word',
  unread: 'Set aside because this site cannot read all of it',
  save: 'Save file',
  open: 'Open file',
  openHow:
    'What is in the file is added. Where the file and this browser differ about the same exercise, the file counts; what only this browser has stays.',
  undo: 'Undo import',
  erase: 'Delete everything',
  eraseUnread: 'Delete what was set aside',
  sure: 'Delete all of it, for everybody who uses this browser? Only a saved file brings it back.',
  sureUnread: 'Delete the text that this site cannot read? Only a saved file brings it back.',
  yes: 'Delete',
  no: 'Keep it',
  erased: 'Deleted. This browser keeps nothing of this site any more, until you read or play on.',
  erasedUnread: 'Deleted. Everything else is still here.',
  refused: 'The browser did not let go of it. Delete it in the browser’s own settings, under site data.',
  saved: 'Saved in your downloads.',
  full: 'There is no room for it in this browser. Nothing was changed.',
  imported: 'Imported.',
  importedPart: 'Imported, except for these entries, which this site cannot use:',
  undone: 'Import undone.',
} as const;

/** Why a file is refused; the reasons are the storage's own. */
const FILE_FAULTS = {
  'too-large': 'That file is too large to be one of this site’s.',
  'no-data': 'That file could not be read. It may be another kind of file, or only half of it arrived.',
  'not-ours': 'That file is not one that this site has saved.',
  newer: 'That file comes from a newer version of this site than this one can read.',
  'nothing-fits': 'Nothing in that file can be used here.',
} as const;

/**
 * Why a file is refused, and that nothing is lost.
 *
 * @example fileFaultSays('not-ours') // 'That file is not one that this site has saved. Nothing was changed.'
 */
export function fileFaultSays(why: keyof typeof FILE_FAULTS): string {
  return `${FILE_FAULTS[why]} Nothing was changed.`;
}

/** Longer values are cut. */
const MOST_SHOWN = 40;

/** The names that lead to one thing that is kept. */
const placeSays = (at: readonly string[]): string => at.join(' › ');

/**
 * What was left out, and what could stand there.
 *
 * @example leftOutSays({ at: ['site', 'swing'], value: 900, may: '1–4' }) // 'site › swing: 900 (it can be 1–4)'
 */
export function leftOutSays({ at, value, may }: { at: readonly string[]; value: unknown; may?: string }): string {
  const text = JSON.stringify(value) ?? '';
  const shown = text.length > MOST_SHOWN ? `${text.slice(0, MOST_SHOWN)}…` : text;
  return `${placeSays(at)}: ${shown}${may ? ` (it can be ${may})` : ''}`;
}

/**
 * That an import is undone, and what of it is not because it was changed afterward.
 *
 * @example undoneSays([{ at: ['site', 'swing'] }]) // 'Import undone, except for what has changed since: site › swing.'
 */
export function undoneSays(left: readonly { at: readonly string[] }[]): string {
  if (!left.length) return OWN_DATA.undone;
  return `Import undone, except for what has changed since: ${left.map(({ at }) => placeSays(at)).join(', ')}.`;
}

const many = (count: number, one: string, more: string): string => (count === 1 ? `one ${one}` : `${count} ${more}`);

/** How much is kept, a line each; what is not there is left out. A lesson goes by its title, one that is gone by its id. */
export function amountsSay(
  kept: {
    exercises: object;
    site: object;
    done: readonly string[];
    last?: string;
    puzzles?: readonly unknown[];
  },
  titles: Readonly<Record<string, string>> = {},
): string[] {
  const [exercises, settings] = [Object.keys(kept.exercises).length, Object.keys(kept.site).length];
  return [
    exercises ? `tempo or lead of ${many(exercises, 'thing you played', 'things you played')}` : '',
    settings ? many(settings, 'setting', 'settings') : '',
    kept.done.length ? `${many(kept.done.length, 'lesson', 'lessons')} marked as done` : '',
    kept.puzzles?.length ? `how ${many(kept.puzzles.length, 'puzzle', 'puzzles')} went` : '',
    kept.last === undefined ? '' : `the lesson you read last: ${titleOf(kept.last, titles)}`,
  ].filter(Boolean);
}

const titleOf = (id: string, titles: Readonly<Record<string, string>>): string =>
  Object.hasOwn(titles, id) ? titles[id] : id;

/** All that a player's browser keeps, a line each. */
export const keptLines = (): string[] =>
  Object.entries(KEPT).map(([name, says]) =>
    name === 'site' ? `${says} ${inSentence(Object.values(SETTINGS_KEPT))}.` : says,
  );

/**
 * The name of a saved file.
 *
 * @example fileName(new Date('2026-11-25')) // 'drum-course-2026-11-25.json'
 */
export function fileName(day: Date): string {
  return `drum-course-${day.toISOString().slice(0, 10)}.json`;
}
