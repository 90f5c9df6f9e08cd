import { LESSON } from '../plant.ts';
import { cell, type Planted } from './planted.ts';

/** In the bytes and the form of files. */
export const BYTES: Planted[] = [
  { name: 'an empty file', changes: cell(''), at: 'content/cells/extra.yaml', says: /empty/ },
  {
    name: 'bytes that are no text',
    changes: { 'content/cells/extra.yaml': Uint8Array.from([...Buffer.from('name: x\nsticking: '), 0xff, 0x0a]) },
    at: 'content/cells/extra.yaml:2:1',
    says: /not UTF-8/,
  },
  {
    name: 'UTF-16',
    changes: { 'content/cells/extra.yaml': Buffer.from('\ufeffname: x', 'utf16le') },
    at: 'content/cells/extra.yaml',
    says: /UTF-16/,
  },
  {
    name: 'lines that end in CR',
    changes: cell('name: x\rsticking: R\r'),
    at: 'content/cells/extra.yaml',
    says: /CR alone/,
  },
  {
    name: 'YAML that is none',
    changes: cell('name: [x\nsticking: R\n'),
    at: 'content/cells/extra.yaml:2:1',
    says: /not YAML/,
  },
  {
    name: 'a list where fields belong',
    changes: cell('- name\n'),
    at: 'content/cells/extra.yaml',
    says: /a cell takes fields/,
  },
  {
    name: 'a lesson without front matter',
    changes: { [LESSON]: 'Text.\n' },
    at: LESSON,
    says: /front matter is missing/,
  },
];
