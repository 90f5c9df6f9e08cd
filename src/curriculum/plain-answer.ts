/**
 * What is typed, without what makes no difference: capitals, "the", commas and a full stop, spare spaces, "and" for "&".
 *
 * @example `plainAnswer(' The A of 1. ')` is `'a of 1'`
 */
export function plainAnswer(typed: string): string {
  const words = typed
    .toLowerCase()
    .replace(/[.,!]/g, ' ')
    .replace(/\band\b/g, '&')
    .split(/\s+/);
  return words.filter((word) => word !== '' && word !== 'the').join(' ');
}
