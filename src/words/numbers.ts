const WORDS = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');

/**
 * A small number as a word, a larger one in figures.
 * @example
 * numberWord(4) // → 'four'
 */
export const numberWord = (n: number): string => WORDS[n] ?? String(n);
