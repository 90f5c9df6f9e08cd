/** The most a text may hold, groups written out; characters count as they are printed, mirrored or not. */
export const LIMITS = { characters: 4096, bars: 32, barSlots: 128, slots: 4096 } as const;
