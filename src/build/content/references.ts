import type { Place } from './content-fault.ts';

/** A link or picture in a text. */
export interface Reference extends Place {
  kind: 'link' | 'picture';
  url: string;
  alt: string;
}
