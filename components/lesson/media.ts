/** Sizes of pictures and films. */

/** Where a picture lies that no lesson asks for: beside the pages of text. */
export const PAGE_FILE = 'content/pages/index.md';

/** A phone, a phone with a fine screen, a page, a page with a fine screen: in pixels. */
const WIDTHS = [480, 960, 1440, 1920];

/** The widths in which a picture is offered: never wider than it is, the widest last. */
export function widthsOf(width: number): number[] {
  const narrower = WIDTHS.filter((one) => one < width);
  return narrower.length < WIDTHS.length ? [...narrower, width] : narrower;
}

/**
 * The sides of a film's room, of which only the ratio counts.
 *
 * @example roomOf('4:3') // { width: 960, height: 720 }
 */
export function roomOf(shape: string): { width: number; height: number } {
  const [across, down] = shape.split(':').map(Number);
  return { width: 960, height: Math.round((960 * down) / across) };
}
