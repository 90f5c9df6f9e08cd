/** Measures of the drawing in its own pixels; a staff space is 10. On screen a pixel is at least 0.8 of a CSS pixel. */
export const SIZE = {
  /** Letters of strokes: 12.4 CSS pixels at the least. */
  letter: 15.5,
  /** Letters of grace notes: 9.4 CSS pixels at the least. */
  graceLetter: 11.75,
  count: 13,
  beat: 15,
  name: 13,
  /** Names where the cells are short. */
  smallName: 11.5,
  /** From one row of names to the next. */
  nameStep: 14,
  /** Half a note head. */
  head: 6,
  /** A flag beyond its stem. */
  flag: 11,
  /** Size of a grace note to a note. */
  grace: 2 / 3,
  /** From a grace note to its primary, and from one grace note to the next, middle to middle. */
  graceGap: 13.5,
  graceStep: 10,
  /** Between what stands in two neighboring places. */
  air: 4,
  /** A stem from its head to its tip, and what each beam after the second one adds. */
  stem: 35,
  beamStep: 7.5,
} as const;

/** Room for a text in the label font, which is not measured: no letter of it is wider, on average, than this. */
export const textWidth = (text: string, size: number): number => text.length * size * 0.58;
