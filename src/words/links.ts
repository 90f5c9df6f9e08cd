/** What is said about links that carry settings, and about an exercise in a frame of another page. */
import { inSentence } from './grammar.ts';
import { SCHOOL } from './site.ts';

/** Labels of links to copy. */
export const LINK_LABELS = {
  copy: 'Copy link',
  link: 'Link',
  copied: 'Link copied.',
  byHand: 'The browser does not let the site copy. The address is selected: copy it by hand.',
  address: 'Address to copy',
  failed: 'Copying did not load: the connection may be gone. Press again to try again.',
  backToOwn: 'Back to my own',
  ownAgain: 'Your own tempo, lead and flam width again.',
} as const;

/**
 * The whole name of a link, for those who hear it without seeing what stands beside it.
 *
 * @example linkName('The flam drag') // 'Copy link: The flam drag'
 */
export const linkName = (what: string): string => `${LINK_LABELS.copy}: ${what}`;

/** What a link can set, as it is said. */
export interface LinkedSettings {
  /** Beats a minute. */
  tempo?: number | undefined;
  lead?: string | undefined;
  /** Milliseconds. */
  flam?: number | undefined;
}

/**
 * What holds because the link says so; nothing where nothing does.
 *
 * @example overridesSay({ tempo: 80, lead: 'left' }) // 'Set by the link: tempo 80, left lead.'
 */
export function overridesSay({ tempo, lead, flam }: LinkedSettings): string {
  const parts = [tempo && `tempo ${tempo}`, lead && `${lead} lead`, flam && `flam width ${flam} ms`].filter(Boolean);
  return parts.length ? `Set by the link: ${parts.join(', ')}.` : '';
}

/**
 * That a link leads to a place that is not there, and where what it sets holds instead.
 *
 * @example noPlaceSays('bar-gone') // 'The link leads to “bar-gone”, which is not on this page. What it sets holds here instead.'
 */
export const noPlaceSays = (anchor: string): string =>
  `The link leads to “${shortened(anchor)}”, which is not on this page. What it sets holds here instead.`;

/** A value of a link that is left out, and what could stand there. */
export interface RefusedSetting {
  name: 'tempo' | 'lead' | 'flam';
  value: string;
  /** What could stand there; nothing where the bar has none of it. */
  instead: readonly string[] | { from: number; to: number };
}

const NAMES = { tempo: 'tempo', lead: 'lead', flam: 'flam width' };

/** Longer values of an address are nobody's sentence. */
const SHOWN = 40;

const shortened = (value: string): string => (value.length > SHOWN ? `${value.slice(0, SHOWN)}…` : value);

/**
 * Why something in a link is left out.
 *
 * @example refusedSays({ name: 'tempo', value: '9999', instead: { from: 30, to: 300 } })
 * // 'The link’s tempo “9999” is left out: it can be 30 to 300.'
 */
export function refusedSays({ name, value, instead }: RefusedSetting): string {
  return `The link’s ${NAMES[name]} “${shortened(value)}” is left out: ${possible(instead)}.`;
}

function possible(instead: RefusedSetting['instead']): string {
  if ('from' in instead) return `it can be ${instead.from} to ${instead.to}`;
  if (instead.length > 1) return `it can be ${inSentence(instead, 'or')}`;
  return instead.length ? `here it is always ${instead[0]}` : 'there is no flam here';
}

/** Labels and sentences of the disclosure that gives an exercise to another page. */
export const EMBED_WORDS = {
  summary: 'Put it into a course system',
  what: 'This HTML shows the exercise alone, with its player, in a frame of your own page.',
  set: 'Tempo, lead and flam width are sent along as they are set above.',
  frame: 'HTML of the frame',
  copyFrame: 'Copy the HTML',
  preview: 'How it will look',
  resize:
    'The frame is as high as the exercise is here; where there is less room it scrolls inside. If your page may run a script, this one keeps the height right at every width:',
  script: 'Script that keeps the height right',
  copyScript: 'Copy the script',
  copied: 'Copied.',
  byHand: 'The browser does not let the site copy. The text is selected: copy it by hand.',
  loading: 'One moment …',
  failed: 'This did not load: the connection may be gone. Press again to try again.',
} as const;

/** The link from an exercise in a frame to its own page. */
export const WHOLE_EXERCISE = `The whole exercise at ${SCHOOL}`;

/**
 * What a frame is called in the page that holds it.
 *
 * @example frameTitle('Flam drags, slow') // 'Flam drags, slow: an exercise by Music school'
 */
export const frameTitle = (title: string): string => `${title}: an exercise by ${SCHOOL}`;
