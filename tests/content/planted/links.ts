import { GOOD, TEXT_LINE } from '../plant.ts';
import { also, here, type Planted } from './planted.ts';

const HIDDEN_PART = { 'content/site.yaml': `${GOOD['content/site.yaml'] as string}\nhide: { parts: [1] }\n` };

/** In links and pictures. */
export const LINKS: Planted[] = [
  {
    name: 'a link that leads nowhere',
    changes: also('[there](/lessons/frist/)'),
    at: here(),
    says: /leads nowhere/,
    hint: /\/lessons\/first\//,
  },
  {
    name: 'a link without its slash',
    changes: also('[there](/course)'),
    at: here(),
    says: /lacks the slash/,
    hint: /\/course\//,
  },
  {
    name: 'a link by file',
    changes: also('[there](../second/index.mdx)'),
    at: here(),
    says: /no address of this site/,
  },
  {
    name: 'a link to a term that is not there',
    changes: also('[there](/glossary/#drag)'),
    at: here(),
    says: /leads nowhere/,
  },
  {
    name: 'a link to a heading that the lesson does not have',
    changes: also('## The other hand\n\n[there](/lessons/first/#the-other-hnd)'),
    at: here(1, TEXT_LINE + 2),
    says: /that page has no #the-other-hnd/,
    hint: /"the-other-hand"/,
  },
  {
    name: 'a link within the lesson to a heading that it does not have',
    changes: also('## The other hand\n\n[there](#other-hand)'),
    at: here(1, TEXT_LINE + 2),
    says: /no #other-hand/,
  },
  {
    name: 'a link to a part that is hidden',
    changes: { ...also('[there](/course/#part-1)'), ...HIDDEN_PART },
    at: here(),
    says: /no #part-1/,
  },
  {
    name: 'a link to an exercise that the page does not show',
    changes: also('[there](#slow)'),
    at: here(),
    says: /no #slow/,
  },
  {
    name: 'a link to a puzzle without a number',
    changes: also('[there](/puzzles/fill/#seven)'),
    at: here(),
    says: /leads to no puzzle: "seven" is no number of a puzzle/,
  },
  {
    name: 'a link to a sum that there is not',
    changes: also('[there](/bar-math/#fits&cell=R)'),
    at: here(),
    says: /no #fits&cell=R/,
  },
  {
    name: 'a script for a link',
    changes: also('[there](javascript:alert(1))'),
    at: here(),
    says: /no address of this site/,
  },
  { name: 'a picture without words', changes: also('![](stick.png)'), at: here(), says: /does not say what it shows/ },
  {
    name: 'a picture that is not there',
    changes: also('![A stick](stick.png)'),
    at: here(),
    says: /no picture "stick.png"/,
  },
  {
    name: 'a link of a page',
    changes: { 'content/pages/hearing.md': '---\ntitle: Hearing\nidea: Two.\n---\n\n[x](/corse/)\n' },
    at: 'content/pages/hearing.md:6:1',
    says: /leads nowhere/,
    hint: /\/course\//,
  },
  {
    name: 'a link of a page that has its address at the foot',
    changes: { 'content/pages/hearing.md': '---\ntitle: Hearing\nidea: Two.\n---\n\n[x][y]\n\n[y]: /corse/\n' },
    at: 'content/pages/hearing.md:8:1',
    says: /leads nowhere/,
  },
  {
    name: 'a picture of a page that has its file at the foot',
    changes: { 'content/pages/hearing.md': '---\ntitle: Hearing\nidea: Two.\n---\n\n![x][y]\n\n[y]: /course/\n' },
    at: 'content/pages/hearing.md:6:1',
    says: /written with its file/,
  },
  {
    name: 'HTML in a page',
    changes: { 'content/pages/hearing.md': '---\ntitle: Hearing\nidea: Two.\n---\n\n<div></div>\n' },
    at: 'content/pages/hearing.md:6:1',
    says: /no HTML/,
  },
];
