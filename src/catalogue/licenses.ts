// They stand where people look for them, at the top level and in public, and belong to no folder of the code.
// eslint-disable-next-line no-restricted-syntax
const texts = import.meta.glob<string>(['/LICENSE', '/public/cc-by-4.0.txt', '/public/font-license.txt'], {
  eager: true,
  import: 'default',
  query: '?raw',
});

/** The texts of the licenses that Barwright stands under. */
export const LICENSE_TEXTS = {
  whole: texts['/LICENSE'],
  course: texts['/public/cc-by-4.0.txt'],
  fonts: texts['/public/font-license.txt'],
} as const;
