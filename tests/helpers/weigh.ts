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

/** Does something with a page and weighs what it loads meanwhile, until nothing more is loading. */
export async function weigh(page: Page, action: () => Promise<unknown>): Promise<Weight> {
  const parts: Promise<Partial<Weight>>[] = [];
  const take = (response: Response) => parts.push(weighOne(response));
  page.context().on('response', take);
  await action();
  await page.waitForLoadState('networkidle');
  page.context().off('response', take);
  return sum(await Promise.all(parts));
}
