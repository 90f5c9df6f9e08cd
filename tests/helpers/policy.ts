const POLICY = /<meta http-equiv="content-security-policy" content="([^"]*)"/i;
const LOADED = /<(?:script|img|iframe|source|link)\b[^>]*?\s(?:src|href)="(?:https?:)?\/\/[^"]*"[^>]*>/g;
/** Names of places, not things that are loaded. */
const NAMES_ONLY = /rel="(canonical|alternate|license|author|me)"/;

/** What a page allows or does that its content policy must not let it, a line each. */
export function policyFaults(html: string): string[] {
  const policy = POLICY.exec(html)?.[1];
  const loose = policy?.match(/'unsafe-inline'|'unsafe-eval'|https?:|\*/g) ?? [];
  const handlers = html.match(/<[a-z][^<>]*?\son[a-z]+="/gi) ?? [];
  const outside = (html.match(LOADED) ?? []).filter((tag) => !NAMES_ONLY.test(tag));
  return [
    ...(policy === undefined ? ['no content policy'] : []),
    ...loose.map((source) => `the content policy allows ${source}`),
    ...handlers.map((tag) => `an inline handler: ${tag.slice(0, 80)}`),
    ...outside.map((tag) => `loaded from another host: ${tag.slice(0, 120)}`),
  ];
}
