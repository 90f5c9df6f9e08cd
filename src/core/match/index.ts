export { findSticking, type Match, type MatchOptions } from './match.ts';
