import { z } from 'astro/zod';
import { line, oneOf } from './fields.ts';

/** Pictures, films and captions of a school's own: files that lie beside the lesson, never an address elsewhere. */

/** Endings of a picture. */
export const PICTURE_FILE = /\.(png|jpe?g|svg|webp|avif)$/i;
/** Endings of a film, and of the captions for one. */
export const FILM_FILE = /\.(mp4|webm|vtt)$/i;

/** Nothing but a name, so that neither another folder nor another host can be meant. */
const LOCAL = /^(\.\/)?[^/\\:?#]+$/;

const beside = (what: string, ending: RegExp, example: string) => {
  const error = `${what} that lies beside the lesson, like "${example}"`;
  return z.string({ error }).refine((name) => LOCAL.test(name) && ending.test(name), { error });
};

/** Width to height of a film. */
export const SHAPES = ['16:9', '4:3', '1:1', '3:4', '9:16'] as const;

const SHOWN = 'what is to be seen, for those who do not see it';
const picture = () => beside('a picture', PICTURE_FILE, './hands.jpg');

/** `<Picture>`: a picture from the lesson's own folder. */
export const pictureAttributes = z.strictObject({
  file: picture().describe('the file beside the lesson: png, jpg, svg, webp or avif'),
  text: line(SHOWN, 300).describe(SHOWN),
  caption: line('a line under the picture', 200).optional().describe('a line under the picture'),
});

/** `<Video>`: a film from the lesson's own folder. */
export const videoAttributes = z.strictObject({
  file: beside('a film', /\.(mp4|webm)$/i, './hands.mp4').describe('the file beside the lesson: mp4 or webm'),
  text: line(SHOWN, 300).describe('what is to be seen; it stands under the film, and on paper in its place'),
  poster: picture().optional().describe('a picture shown until it plays'),
  captions: beside('captions', /\.vtt$/i, './hands.vtt')
    .optional()
    .describe('what is said in it, as a .vtt file; needed where somebody speaks'),
  shape: oneOf(SHAPES).optional().describe('width to height where there is no poster; 16:9 when left out'),
});

/** The attributes of `<Picture>`. */
export type PictureAttributes = z.infer<typeof pictureAttributes>;
/** The attributes of `<Video>`. */
export type VideoAttributes = z.infer<typeof videoAttributes>;

/**
 * The path of a file that lies beside another one.
 *
 * @example fileBeside('content/lessons/01-one/01-first/index.mdx', './hands.jpg') // 'content/lessons/01-one/01-first/hands.jpg'
 */
export function fileBeside(lesson: string, name: string): string {
  return lesson.replace(/[^/]*$/, name.replace(/^\.\//, ''));
}
