import {
  parseSticking,
  perform,
  readPhrase,
  type PerformOptions,
  type Phrase,
  type PhraseTextRequest,
  type Sticking,
  type Timeline,
} from '../../src/core/index.ts';

/** A sticking that is known to be one. */
export function stickingOf(text: string): Sticking {
  const read = parseSticking(text);
  if (!read.ok) throw new Error(`${text}: ${read.fault.message}`);
  return read.sticking;
}

/** A phrase that is known to add up: one text, or cells. */
export function phraseOf(
  what: string | PhraseTextRequest['cells'],
  rest: Omit<PhraseTextRequest, 'cells'> = {},
): Phrase {
  const cells = typeof what === 'string' ? [{ id: 'text', text: what }] : what;
  const read = readPhrase({ cells, ...rest });
  if (!read.ok) throw new Error(read.fault.message);
  return read.phrase;
}

/** The timeline of a phrase that is known to add up. */
export function timelineOf(
  what: string | PhraseTextRequest['cells'],
  rest: Omit<PhraseTextRequest, 'cells'> & PerformOptions = {},
): Timeline {
  const { flams, orchestration, counts, ...request } = rest;
  return perform(phraseOf(what, request), { flams, orchestration, counts });
}

/** The message of a phrase that is refused. */
export function refusalOf(what: string | PhraseTextRequest['cells'], rest: Omit<PhraseTextRequest, 'cells'>): string {
  const cells = typeof what === 'string' ? [{ id: 'text', text: what }] : what;
  const read = readPhrase({ cells, ...rest });
  return read.ok ? 'not refused' : read.fault.message;
}
