/** What the site says where a school has arranged the course its own way. */

/** On the page of something that the school has taken out of its lists. */
export const NOT_LISTED = {
  lesson: 'Not part of the course here; the page stays for those who have its address',
  exercise: 'Not among the exercises here; the page stays for those who have its address',
} as const;

/**
 * A cell with its sticking, and its name elsewhere where the school calls it something else.
 *
 * @example cellNameSays({ name: 'ruff ride', elsewhere: 'flam drag', sticking: '>lR LL R' }) // 'ruff ride, elsewhere flam drag (>lR LL R)'
 */
export function cellNameSays({
  name,
  elsewhere,
  sticking,
}: {
  name: string;
  elsewhere?: string;
  sticking: string;
}): string {
  return `${elsewhere ? `${name}, elsewhere ${elsewhere}` : name} (${sticking})`;
}
