import { also, here, type Planted } from './planted.ts';

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
    name: 'HTML in a page',
    changes: { 'content/pages/hearing.md': '---\ntitle: Hearing\nidea: Two.\n---\n\n<div></div>\n' },
    at: 'content/pages/hearing.md:6:1',
    says: /no HTML/,
  },
];
