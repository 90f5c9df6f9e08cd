/**
 * Checks every built page: valid HTML, a content policy that allows nothing inline, and links that lead somewhere, in
 * the plain build and in the one below a base path. `node tests/config/check-html.ts [report.json]`
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { type BuiltSite, pagesOf, PLAIN, SCHOOL } from '../helpers/built-site.ts';
import { brokenLinks, readSite } from '../helpers/links.ts';
import { policyFaults } from '../helpers/policy.ts';

const rules = JSON.parse(readFileSync(new URL('html-validate.json', import.meta.url), 'utf8'));
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

async function faultsOf(site: BuiltSite, page: string, validate: boolean): Promise<string[]> {
  const files = readSite(site);
  const html = files.html.get(page)!;
  return [
    ...(validate ? await htmlFaults(html) : []),
    ...(validate ? policyFaults(html) : []),
    ...brokenLinks(files, page),
  ];
}

async function check(site: BuiltSite, validate: boolean): Promise<number[]> {
  const counts = await Promise.all(
    pagesOf(site).map(async (page) => {
      const faults = await faultsOf(site, page, validate);
      for (const fault of faults) console.error(`${join(site.root, page)}\n  ${fault}`);
      return faults.length;
    }),
  );
  return counts;
}

// The pages of the second build differ in their links alone.
const counts = [...(await check(PLAIN, true)), ...(await check(SCHOOL, false))];
const failed = counts.filter((count) => count > 0).length;
const passed = counts.length - failed;
console.log(`${passed} pages are sound, ${failed} are not`);
if (process.argv[2]) writeFileSync(process.argv[2], JSON.stringify({ passed, failed }));
process.exitCode = failed ? 1 : 0;
