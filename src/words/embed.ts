/** What is said about an exercise in a frame of another page. */
import { SCHOOL } from './site.ts';

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
