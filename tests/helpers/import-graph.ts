import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { BuiltSite } from './built-site.ts';

const STATIC = /(?:\bfrom|\bimport)\s*["'`](\.{1,2}\/[^"'`$]+)["'`]/g;
const DYNAMIC = /\bimport\(\s*["'`](\.{1,2}\/[^"'`$]+)["'`]/g;

const importsIn = (code: string, pattern: RegExp, from: string): string[] =>
  [...code.matchAll(pattern)].map(([, path]) => posix.join(posix.dirname(from), path));

/** The files of a built site and what they import, by their addresses from the root of the server. */
export class ImportGraph {
  readonly site: BuiltSite;
  readonly #files = new Map<string, Buffer>();
  readonly #sizes = new Map<string, number>();

  constructor(site: BuiltSite) {
    this.site = site;
  }

  read(address: string): Buffer {
    const known = this.#files.get(address);
    const file = known ?? readFileSync(join(this.site.root, address.slice(this.site.base.length - 1)));
    this.#files.set(address, file);
    return file;
  }

  /** Everything that comes with these files: they themselves and, on and on, what they import. */
  closure(starts: Iterable<string>): Set<string> {
    const all = new Set<string>();
    const open = [...starts];
    for (let file = open.pop(); file !== undefined; file = open.pop()) {
      if (all.has(file)) continue;
      all.add(file);
      open.push(...importsIn(this.read(file).toString(), STATIC, file));
    }
    return all;
  }

  /** What these files import only when something happens, and all that comes with it. */
  later(files: Iterable<string>): Set<string> {
    return this.closure([...files].flatMap((file) => importsIn(this.read(file).toString(), DYNAMIC, file)));
  }

  /** Bytes of files as they travel. */
  gzipped(addresses: Iterable<string>): number {
    return [...addresses].reduce((sum, address) => sum + this.#gzippedOne(address), 0);
  }

  #gzippedOne(address: string): number {
    const size = this.#sizes.get(address) ?? gzipSync(this.read(address)).length;
    this.#sizes.set(address, size);
    return size;
  }
}

/** What a page loads, in bytes after gzip. Icons are left out: a site has one for all its pages. */
export interface BuiltWeights {
  html: number;
  css: number;
  /** Files of script that are loaded with the page. */
  script: number;
  /** Script that stands in the page and is part of `html`. */
  inline: number;
  /** Fonts travel as they are. */
  fonts: number;
  /** What waking the page's first player adds; left out where it has none. */
  touch?: number;
  /** What that player can ask for later: the sound, the engraver. */
  later?: number;
}

/** The address of every element of a kind in a page. */
const addresses = (html: string, tag: RegExp, attribute: RegExp): string[] =>
  [...html.matchAll(tag)].flatMap(([element]) => [...element.matchAll(attribute)].map(([, address]) => address));

const SHEETS = /<link\b[^>]*\srel="stylesheet"[^>]*>/g;
/** Islands that wake by themselves. */
const WAKING = /<astro-island\b[^>]*(?:\sclient="(?:load|only)"|&quot;value&quot;:&quot;now&quot;)[^>]*>/g;
const ISLAND_FILES = /\s(?:component|renderer)-url="([^"]*)"/g;
const FIRST_PLAYER = /<astro-island\b[^>]*component-url="[^"]*\/Player\.[^>]*>/;

/** Weighs a page of a built site by what its files name, without a browser. */
export function weighBuilt(graph: ImportGraph, page: string, html: string): BuiltWeights {
  const scripts = [...html.matchAll(/<script(?![^>]*\ssrc=)[^>]*>([\s\S]*?)<\/script>/g)].map(([, text]) => text);
  const loaded = graph.closure([
    ...addresses(html, /<script\b[^>]*>/g, /\ssrc="([^"]*)"/g),
    ...importsIn(scripts.join(''), STATIC, `${graph.site.base}${page}`),
    ...addresses(html, WAKING, ISLAND_FILES),
  ]);
  const fonts = new Set([...html.matchAll(/[^"(]+\.woff2/g)].map(([address]) => address));
  const weights = {
    html: gzipSync(html).length,
    css: graph.gzipped(new Set(addresses(html, SHEETS, /\shref="([^"]*)"/g))),
    script: graph.gzipped(loaded),
    inline: scripts.length > 0 ? gzipSync(scripts.join('')).length : 0,
    fonts: [...fonts].reduce((sum, font) => sum + graph.read(font).length, 0),
  };
  const player = FIRST_PLAYER.exec(html)?.[0].matchAll(ISLAND_FILES);
  if (!player) return weights;
  const touched = graph.closure([...player].map(([, address]) => address)).difference(loaded);
  return {
    ...weights,
    touch: graph.gzipped(touched),
    later: graph.gzipped(graph.later(touched).difference(touched)),
  };
}

/** What a page weighs when it is opened, fonts left out. */
export const openedWeight = ({ html, css, script }: BuiltWeights): number => html + css + script;
