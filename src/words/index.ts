/** The one door to what the site says. */
export * from './addresses.ts';
export * from './labels.ts';
export * from './sentences.ts';
export * from './questions.ts';
export * from './figures.ts';
export * from './found.ts';
export * from './media.ts';
export * from './school.ts';
export * from './exercises.ts';
export * from './progress.ts';
export * from './privacy.ts';
export * from './write.ts';
export * from './ladder.ts';
export * from './puzzles.ts';
export * from './puzzle-sentences.ts';
export * from './puzzle-laying.ts';
export * from './search.ts';
