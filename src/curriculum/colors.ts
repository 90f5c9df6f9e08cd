import type { SiteData } from './site.ts';

/** The warm color of a school. */
type Colors = NonNullable<SiteData['colours']>;

/**
 * The warm color on dark paper, for a style sheet: the school's, or its warm color made light enough to read there (a
 * lightness of 0.76 in OKLCH has a contrast of 8 to 1 with the paper).
 *
 * @example darkWarm({ warm: '#a8431a', warmDark: '#f0936a' }) // '#f0936a'
 * @example darkWarm({ warm: '#a8431a' }) // 'oklch(from #a8431a max(l, 0.76) c h)'
 */
export function darkWarm({ warm, warmDark }: Colors): string {
  return warmDark ?? `oklch(from ${warm} max(l, 0.76) c h)`;
}
