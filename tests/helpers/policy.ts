import { createHash } from 'node:crypto';

const POLICY = /<meta http-equiv="content-security-policy" content="([^"]*)"/i;
const LOADED = /<(?:script|img|iframe|source|link)\b[^>]*?\s(?:src|href)="(?:https?:)?\/\/[^"]*"[^>]*>/g;
/** Names of places, not things that are loaded. */
const NAMES_ONLY = /rel="(canonical|alternate|license|author|me)"/;
const IN_PAGE = /<(script|style)\b([^>]*)>([\s\S]*?)<\/\1>/gi;
/** Data beside the page, which no browser runs. */
const IS_DATA = /\btype="application\/(?:ld\+)?json"/;

/** Hashes that a policy lists for nothing on its page, and scripts and styles of the page that have none. */
function hashFaults(html: string, policy: string): string[] {
  const listed = [...policy.matchAll(/'(sha256-[^']+)'/g)].map(([, hash]) => hash);
  const standing = [...html.matchAll(IN_PAGE)]
    .filter(([, , attributes, text]) => text && !IS_DATA.test(attributes))
    .map(([, element, , text]) => ({
      element,
      text,
      hash: `sha256-${createHash('sha256').update(text).digest('base64')}`,
    }));
  const used = new Set(standing.map(({ hash }) => hash));
  return [
    ...listed.filter((hash) => !used.has(hash)).map((hash) => `the content policy lists ${hash}, which nothing has`),
    ...standing
      .filter(({ hash }) => !listed.includes(hash))
      .map(({ element, text }) => `a ${element} that the content policy does not list: ${text.slice(0, 80)}`),
  ];
}

/** What a page allows or does that its content policy must not let it, a line each. */
export function policyFaults(html: string): string[] {
  const policy = POLICY.exec(html)?.[1];
  const loose = policy?.match(/'unsafe-inline'|'unsafe-eval'|https?:|\*/g) ?? [];
  const handlers = html.match(/<[a-z][^<>]*?\son[a-z]+="/gi) ?? [];
  const outside = (html.match(LOADED) ?? []).filter((tag) => !NAMES_ONLY.test(tag));
  return [
    ...(policy === undefined ? ['no content policy'] : hashFaults(html, policy)),
    ...loose.map((source) => `the content policy allows ${source}`),
    ...handlers.map((tag) => `an inline handler: ${tag.slice(0, 80)}`),
    ...outside.map((tag) => `loaded from another host: ${tag.slice(0, 120)}`),
  ];
}
