import { sayBar } from '../words/grammar.ts';
import { BAR_WORD, type BarWord } from '../words/site.ts';

/** Fields of content that are read as they stand. */
const READ = ['title', 'idea', 'purpose', 'enough', 'term', 'says', 'note', 'basis'];

/** A title, an idea, a sentence of the content, with the school's word for a bar; everything else as it is. */
export function said<T extends object>(data: T, word: BarWord = BAR_WORD): T {
  if (word === 'bar') return data;
  const pairs = Object.entries(data).map(([name, value]) => [name, saidField(name, value, word)]);
  return Object.fromEntries(pairs) as T;
}

function saidField(name: string, value: unknown, word: BarWord): unknown {
  if (READ.includes(name) && typeof value === 'string') return sayBar(value, word);
  // What else a bar is called is then the other word.
  if (name === 'also' && Array.isArray(value)) return value.map((other) => (other === word ? 'bar' : other));
  return value;
}
