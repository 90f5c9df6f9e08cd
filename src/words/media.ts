/** What is said about pictures, films and things to listen to. */
export const MEDIA_WORDS = {
  listen: 'Listen to',
  at: 'at',
  film: 'A film on the page:',
  captions: 'Captions',
} as const;
