/** What the page on licenses says, and the line at the foot of every page that leads to it. A school keeps both. */

/** The address of the licenses of the packages in the browser's files; the build writes it. */
export const PACKAGE_LICENSES = '/package-licenses.txt';

/** The line at the foot of every page. */
export const MADE_BY = 'Course and software by the Barwright authors';

/** The page. */
export const LICENSE_WORDS = {
  title: 'License',
  description: 'Who made this course and its software, and what you may do with them.',
  idea: 'You may use, copy and change the course and the software, for any purpose, as long as their authors stay named.',
  school:
    'Barwright is the course and the software of this site, made by the Barwright authors. A school that puts it on a server may give the site a name of its own and add lessons of its own. What it adds is the school’s, under the terms the school sets.',
  parts: 'What is under which license',
  course: 'The lessons, exercises and other texts of the course: Creative Commons Attribution 4.0 International.',
  code: 'The software: MIT License.',
  fonts: 'The text fonts and the outlines of the notation: SIL Open Font License 1.1.',
  packages: 'Packages by others, whose code is in the scripts of this site: each under a license of its own.',
  whole: 'The license of Barwright',
  wholeCourse: 'Creative Commons Attribution 4.0, in full',
  wholeFonts: 'SIL Open Font License, in full',
  wholePackages: 'The licenses of all packages (text)',
} as const;
