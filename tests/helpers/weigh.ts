import { gzipSync } from 'node:zlib';
import type { Page, Response } from '@playwright/test';

/** Bytes as they travel, gzipped where a server would, by what they are. */
export interface Weight {
  html: number;
  css: number;
  /** Files of script, and what stands inline in the page (which is part of html as well). */
  script: number;
  font: number;
  other: number;
}

const NOTHING: Weight = { html: 0, css: 0, script: 0, font: 0, other: 0 };
const KINDS: [RegExp, keyof Weight][] = [
  [/text\/html/, 'html'],
  [/text\/css/, 'css'],
  [/javascript/, 'script'],
  [/font\//, 'font'],
];
const COMPRESSED = /^font\/|image\/(png|jpeg|webp)/;

/** Adds up everything but the fonts, inline script counted once. */
export function withoutFonts(weight: Weight, inlineScript = 0): number {
  return weight.html + weight.css + weight.script + weight.other - inlineScript;
}

const gzipped = (body: Buffer | string) => gzipSync(body).length;

/** The inline scripts of a page, gzipped together. */
export function inlineScriptOf(html: string): number {
  const scripts = [...html.matchAll(/<script(?![^>]*\ssrc=)[^>]*>([\s\S]*?)<\/script>/g)].map(([, text]) => text);
  return scripts.length ? gzipped(scripts.join('')) : 0;
}

async function weighOne(response: Response): Promise<Partial<Weight>> {
  if (response.status() !== 200) return {};
  const type = response.headers()['content-type'] ?? '';
  const body = await response.body();
  const kind = KINDS.find(([pattern]) => pattern.test(type))?.[1] ?? 'other';
  return { [kind]: COMPRESSED.test(type) ? body.length : gzipped(body) };
}

function sum(parts: Partial<Weight>[]): Weight {
  const total = { ...NOTHING };
  for (const part of parts) for (const [kind, bytes] of Object.entries(part)) total[kind as keyof Weight] += bytes;
  return total;
}

const QUIET_MS = 500;

/** Keeps an eye on what is on its way, so that one can wait until nothing has been for a while. */
function traffic(page: Page) {
  const context = page.context();
  const parts: Promise<Partial<Weight>>[] = [];
  let open = 0;
  let last = performance.now();
  const started = () => ((open += 1), (last = performance.now()));
  const ended = () => ((open -= 1), (last = performance.now()));
  const take = (response: Response) => parts.push(weighOne(response));
  const listeners = [
    ['request', started],
    ['requestfinished', ended],
    ['requestfailed', ended],
    ['response', take],
  ] as const;
  for (const [event, listener] of listeners) context.on(event as 'response', listener);
  return {
    parts,
    quiet: () => open === 0 && performance.now() - last > QUIET_MS,
    stop: () => listeners.forEach(([event, listener]) => context.off(event as 'response', listener)),
  };
}

/** Does something with a page and weighs what it loads until nothing has been on its way for half a second. */
export async function weigh(page: Page, action: () => Promise<unknown>): Promise<Weight> {
  const seen = traffic(page);
  await action();
  while (!seen.quiet()) await page.waitForTimeout(50);
  seen.stop();
  return sum(await Promise.all(seen.parts));
}
