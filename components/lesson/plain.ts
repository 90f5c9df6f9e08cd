const SIGNS: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

/**
 * The words of a piece of HTML, for a place that takes no markup.
 *
 * @example plain('Drum &amp; <em>hand</em>') // 'Drum & hand'
 */
export function plain(html: string): string {
  return html
    .replace(/<[^>]*>/g, '')
    .replace(/&(#?\w+);/g, (whole, name: string) => SIGNS[name] ?? whole)
    .trim();
}
