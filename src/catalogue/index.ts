/** The collections, loaded: the one place that asks Astro for content. */
export * from './site.ts';
export * from './lessons.ts';
export * from './licenses.ts';
export * from './collections.ts';
export * from './names.ts';
export * from './bars.ts';
export * from './text.ts';
export * from './stickings.ts';
export * from './files.ts';
export * from './practice.ts';
export * from './specimens.ts';
export * from './rudiments.ts';
export * from './puzzles.ts';
export * from './count-notes.ts';
