import { readFileSync } from 'node:fs';
import { HtmlValidate } from 'html-validate';
import { describe, expect, test } from 'vitest';
import { type BuiltSite, pagesOf, PLAIN, SCHOOL } from '../helpers/built-site.ts';
import { brokenLinks, readSite } from '../helpers/links.ts';
import { policyFaults } from '../helpers/policy.ts';

const rules = JSON.parse(readFileSync(new URL('../config/html-validate.json', import.meta.url), 'utf8'));
const validator = new HtmlValidate(rules);

/** Astro puts a style element of its own right before the first island, wherever that stands. Every browser takes it. */
const isAstros = (message: string) => /^<style> element is not permitted as content under/.test(message);

async function htmlFaults(html: string): Promise<string[]> {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) =>
    messages
      .filter(({ message }) => !isAstros(message))
      .map(({ line, column, message, ruleId }) => `${line}:${column} ${message} (${ruleId})`),
  );
}

const SITES: [name: string, site: BuiltSite][] = [
  ['the site', PLAIN],
  ['a school’s site below a base path', SCHOOL],
];

describe.each(SITES)('%s', (_, site) => {
  test.each(pagesOf(site))('/%s is valid, keeps to its policy, and its links lead somewhere', async (page) => {
    const files = readSite(site);
    const html = files.html.get(page)!;
    expect([...(await htmlFaults(html)), ...policyFaults(html), ...brokenLinks(files, page)]).toEqual([]);
  });
});

const attribute = (tag: string, name: string) => new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1];

test.each(pagesOf(PLAIN).filter((page) => page.startsWith('lessons/')))(
  'every bar of /%s is a picture with a name, and what it reads in words stands beside it',
  (page) => {
    const html = readSite(PLAIN).html.get(page)!;
    const figures = [...html.matchAll(/<figure\b[^>]*\bbar-figure\b[\s\S]*?<\/figure>/g)].map(([figure]) => figure);
    for (const figure of figures) {
      const [score] = /<div [^>]*class="score\b[^>]*>/.exec(figure) ?? [''];
      expect(attribute(score, 'role')).toBe('img');
      expect(attribute(score, 'aria-label')).toMatch(/\w/);
      const words = new RegExp(`\\sid="${attribute(score, 'aria-describedby')}"[^>]*>([^<]*)`).exec(figure)?.[1];
      expect(words!.trim().length).toBeGreaterThan(10);
    }
    expect(figures).toHaveLength(html.match(/\sdata-reading\b/g)?.length ?? 0);
  },
);
