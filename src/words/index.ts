/** The one door to what the site says. */
export * from './addresses.ts';
export * from './labels.ts';
export * from './sentences.ts';
