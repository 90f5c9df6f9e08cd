/** Tone prints a line to the console as it loads, unless it finds this. To be imported before Tone. */
(globalThis as { TONE_SILENCE_LOGGING?: boolean }).TONE_SILENCE_LOGGING = true;
