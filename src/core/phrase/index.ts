export * from './types.ts';
export { layPhrase } from './lay.ts';
export { readPhrase, type CellText, type PhraseFault, type PhraseTextRequest } from './read.ts';
export { checkPhrase } from './check-pattern.ts';
