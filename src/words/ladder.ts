/** What is said about practising a rudiment slow, fast and slow again. */

/** Labels of a rudiment's page. */
export const LADDER = {
  parts: 'Made of',
  wholes: 'Part of',
  leftLead: 'Left lead',
  title: 'Open, closed, open',
  why: 'Begin slower than you need to, go up a step at a time, and turn round at the first step where a stroke goes missing or leans. Then come down the same steps: that is where the hands learn to stay loose.',
  play: 'Play the ladder',
  stop: 'Stop',
  turn: 'Turn round here',
  steps: 'Steps',
  how: 'A step by itself sets the tempo of the player above; while the ladder plays, it goes on from there.',
  failed: 'The ladder did not load: the connection may be gone. Press again to try again.',
  loading: 'Loading the ladder …',
} as const;

/**
 * The whole ladder in a sentence, for who has no script or only paper.
 *
 * @example ladderSays([60, 70, 80], 4) // '60, 70 and 80 beats a minute, and back the same way: the line above 4 times on each step.'
 */
export function ladderSays(tempos: readonly number[], rounds: number, compound = false): string {
  const beats = compound ? 'dotted quarters' : 'beats';
  const list = `${tempos.slice(0, -1).join(', ')} and ${tempos.at(-1)}`;
  return `${list} ${beats} a minute, and back the same way: the line above ${times(rounds)} on each step.`;
}

const times = (rounds: number): string => (rounds === 1 ? 'once' : rounds === 2 ? 'twice' : `${rounds} times`);

/**
 * What one step does, for those who hear its button.
 *
 * @example stepSays(80) // '80 beats a minute'
 */
export const stepSays = (tempo: number, compound = false): string =>
  `${tempo} ${compound ? 'dotted quarters' : 'beats'} a minute`;

/**
 * What the ladder does just now.
 *
 * @example ladderNews({ tempo: 80, falling: false }) // 'Up: 80.'
 */
export function ladderNews(now: { tempo: number; falling: boolean }): string {
  return `${now.falling ? 'Down' : 'Up'}: ${now.tempo}.`;
}

/**
 * Said when a step has set the player's tempo.
 *
 * @example tempoSet(80) // 'The player above is set to 80.'
 */
export const tempoSet = (tempo: number): string => `The player above is set to ${tempo}.`;
