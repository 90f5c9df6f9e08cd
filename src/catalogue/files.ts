import type { ImageMetadata } from 'astro';
import { fileBeside } from '../curriculum/index.ts';

type Loaders<T> = Record<string, () => Promise<T>>;

// Which files a school lays beside its lessons is not known beforehand; content imports nothing.
// eslint-disable-next-line no-restricted-syntax
const pictures: Loaders<ImageMetadata> = import.meta.glob<ImageMetadata>(
  [
    '/content/lessons/*/*/*.{png,jpg,jpeg,svg,webp,avif}',
    '/content/pages/*.{png,jpg,jpeg,svg,webp,avif}',
    '/components/lesson/specimens/*.{png,jpg,jpeg,svg,webp,avif}',
  ],
  { import: 'default' },
);

// A small file must not be written into the page: the content policy takes films from the site's own address only.
// eslint-disable-next-line no-restricted-syntax
const films: Loaders<string> = import.meta.glob<string>(
  [
    '/content/lessons/*/*/*.{mp4,webm,vtt}',
    '/content/pages/*.{mp4,webm,vtt}',
    '/components/lesson/specimens/*.{mp4,webm,vtt}',
  ],
  { import: 'default', query: '?url&no-inline' },
);

/** A picture that lies beside the content file `beside`. Throws where it does not; the checker has looked before. */
export const pictureBeside = (beside: string, name: string): Promise<ImageMetadata> => load(pictures, beside, name);

/** The address of a film or its captions that lie beside the content file `beside`. Throws where they do not. */
export const filmBeside = (beside: string, name: string): Promise<string> => load(films, beside, name);

function load<T>(loaders: Loaders<T>, beside: string, name: string): Promise<T> {
  const loader = loaders[`/${fileBeside(beside, name)}`];
  if (!loader) throw new Error(`${beside}: there is no file "${name}" beside it`);
  return loader();
}
