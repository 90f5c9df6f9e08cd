/** What a teacher copies into a page of their own to show an exercise there, and what the frame there says. */
import { between, fitWhole, matching, oneOf } from '../../../src/storage/index.ts';

/** No exercise is higher, in CSS pixels. */
const HIGHEST = 100_000;

/** What an exercise in a frame tells the page around it. */
const HEIGHT = {
  barwright: oneOf('height'),
  id: matching(/./, 'flam-drag-slow'),
  height: between({ from: 1, to: HIGHEST }),
};

/**
 * The height in a message from a frame, in CSS pixels; undefined for any other message.
 *
 * @example heightIn({ barwright: 'height', id: 'a', height: 431 }) // 431
 */
export const heightIn = (message: unknown): number | undefined => fitWhole(message, HEIGHT)?.height;

/** What the frame in another page is made of. */
export interface FrameFacts {
  /** Whole address of the exercise's page for frames, with its settings. */
  address: string;
  title: string;
  /** CSS pixels. */
  height: number;
}

/**
 * The frame as HTML. It has the width of what it stands in, loads when it comes near, may sound and may copy links.
 *
 * @example frameHtml({ address: 'https://school.example/embed/a/', title: 'A', height: 400 })
 * // '<iframe src="https://school.example/embed/a/" title="A" width="100%" height="400" …></iframe>'
 */
export function frameHtml({ address, title, height }: FrameFacts): string {
  return (
    `<iframe src="${quoted(address)}" title="${quoted(title)}" width="100%" height="${height}" ` +
    'style="border: 0" loading="lazy" allow="autoplay; clipboard-write"></iframe>'
  );
}

function quoted(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/**
 * A script for the page around the frames: each becomes as high as its exercise says. It listens to the site at
 * `origin` alone, and asks once, for frames that were there before it.
 */
export function resizeScript(origin: string): string {
  return `<script>
  addEventListener('message', ({ origin, source, data }) => {
    if (origin !== '${origin}' || data?.barwright !== 'height') return;
    for (const frame of document.querySelectorAll('iframe'))
      if (frame.contentWindow === source) frame.height = data.height;
  });
  for (const frame of document.querySelectorAll('iframe[src^="${origin}/"]'))
    frame.contentWindow.postMessage({ barwright: 'ask' }, '*');
</script>`;
}
