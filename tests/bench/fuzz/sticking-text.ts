import { SURFACES } from '../../../src/core/index.ts';
import { between, pick } from './attack.ts';

type Random = () => number;

const METERS = ['1/4', '2/4', '4/4', '3/8', '6/8', '2+2+3/8', '5/16', '3/2', '15/8'];
const SCRAPS = [
  ...'RLKHrl-_|+>^()z@:{}[]/ \n\t0123456789',
  '@snare',
  'feet:',
  '[4/4:4]',
  '{R L}2',
  '😀',
  '\ud800',
  '\0',
];

const chance = (random: Random, of: number): boolean => random() < of;
const surface = (random: Random): string => (chance(random, 0.15) ? `@${pick(random, SURFACES)}:` : '');

function handStroke(random: Random, hand: 'R' | 'L', graces: boolean): string {
  const free = hand === 'R' ? 'l' : 'r';
  const before = pick(random, ['', '', 'r', 'l', 'rl', 'll']);
  const figure = graces && chance(random, 0.25) ? [...before, free].map((g) => g + surface(random)).join('') : '';
  const body = `${figure}${hand}${chance(random, 0.08) ? 'z' : ''}${surface(random)}`;
  return pick(random, [body, body, body, `>${body}`, `^${body}`, `(${body})`]);
}

const footStroke = (random: Random, foot: string): string => pick(random, ['', '', '>']) + foot + surface(random);

function chord(random: Random): string {
  const who = random();
  if (who < 0.12) return '-';
  const hands = who < 0.2 ? [handStroke(random, 'R', false), handStroke(random, 'L', false)] : [];
  if (who >= 0.2 && who < 0.88) hands.push(handStroke(random, chance(random, 0.5) ? 'R' : 'L', true));
  const feet = hands.length === 0 || chance(random, 0.15) ? [footStroke(random, pick(random, ['K', 'H']))] : [];
  return [...hands, ...feet].join('+');
}

const slot = (random: Random): string =>
  Array.from({ length: pick(random, [1, 1, 1, 1, 2, 2, 3, 4]) }, () => chord(random)).join('');

const line = (random: Random, length: number, hold = 0.1): string =>
  Array.from({ length }, (_, i) => (i > 0 && chance(random, hold) ? '_' : slot(random))).join(' ');

function groups(random: Random): string {
  const inner = `{${line(random, between(random, 1, 5))}}${between(random, 1, 4)}`;
  return chance(random, 0.3) ? `{${inner} ${line(random, 2)}}${between(random, 1, 3)}` : inner;
}

const footSlot = (random: Random): string => pick(random, ['-', '-', 'K', 'H', 'KK', '-K', 'K+H', 'HHH']);

function twoLines(random: Random): string {
  const length = between(random, 1, 12);
  const hands = Array.from({ length }, () => handStroke(random, chance(random, 0.5) ? 'R' : 'L', true));
  return `${hands.join(' ')}\nfeet: ${Array.from({ length }, () => footSlot(random)).join(' ')}`;
}

/** Text that is a sticking or is nearly one. */
export function nearlySticking(random: Random): string {
  const kind = random();
  if (kind < 0.35) return line(random, between(random, 1, 12));
  if (kind < 0.6) return `${chance(random, 0.5) ? line(random, 3) + ' ' : ''}${groups(random)} ${slot(random)}`;
  if (kind < 0.75) return twoLines(random);
  return `[${pick(random, METERS)}:${between(random, 1, 8)}] ${line(random, between(random, 1, 9))} | ${slot(random)}`;
}

/** Text with a few characters taken out, put in or exchanged. */
export function damaged(random: Random, text: string): string {
  const characters = [...text];
  for (let n = between(random, 1, 3); n > 0; n -= 1)
    characters.splice(between(random, 0, characters.length), between(random, 0, 1), pick(random, SCRAPS));
  return characters.join('');
}

/** Scraps of the notation and of anything else. */
export const scraps = (random: Random): string =>
  Array.from({ length: between(random, 0, 30) }, () => pick(random, SCRAPS)).join('');
