import type { SiteData } from './site.ts';

/** The warm color of a school. */
type Colors = NonNullable<SiteData['colors']>;

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

/** The paper of the pages, as src/styles/tokens.css has it. */
export const PAPER = { light: '#fbfaf4', dark: '#191814' } as const;

/** The relative luminance of a color, 0 to 1 (WCAG 2.2). */
function luminance(color: string): number {
  const [red, green, blue] = [1, 3, 5]
    .map((at) => Number.parseInt(color.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/**
 * The contrast of two colors such as `#a8431a`, 1 to 21 (WCAG 2.2, contrast ratio).
 *
 * @example contrast('#000000', '#ffffff') // 21
 */
export function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}
