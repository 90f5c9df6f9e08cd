/** What pages may weigh, in bytes as they travel (gzip); a kB is 1,000 bytes. */
export const LIMITS = {
  /** A lesson when it is opened, fonts left out. */
  lesson: 35_000,
  /** The script in that. */
  lessonScript: 6_000,
  /** What the first touch of a player adds. */
  firstTouch: 30_000,
  /** All fonts of a page. */
  fonts: 150_000,
};
