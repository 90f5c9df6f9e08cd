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
    changes: cell('name: *x\nsticking: R\n'),
    at: 'content/cells/extra.yaml:1:1',
    says: /not YAML/,
  },
  {
    name: 'a bracket that is not closed',
    changes: cell('name: [x\nsticking: R\n'),
    at: 'content/cells/extra.yaml:1:1',
    says: /a \[ is opened here/,
    hint: /end it with \]/,
  },
  {
    name: 'a quote that is not closed',
    changes: cell("name: x\nsticking: 'R\nnote: y\n"),
    at: 'content/cells/extra.yaml:2:1',
    says: /a quote is opened here/,
  },
  {
    name: 'a line that begins too far in',
    changes: cell('name: x\n sticking: R\n'),
    at: 'content/cells/extra.yaml:2:1',
    says: /begins further in than "name"/,
    hint: /where "name" begins/,
  },
  {
    name: 'a line that begins too far out',
    changes: cell('name: x\nsticking:\n  more: R\n less: R\n'),
    at: 'content/cells/extra.yaml:4:1',
    says: /begins at a place where none/,
  },
  {
    name: 'a line that begins with a tab',
    changes: cell('name: x\n\tsticking: R\n'),
    at: 'content/cells/extra.yaml:2:1',
    says: /begins with a tab/,
  },
  {
    name: 'a colon inside a text',
    changes: cell('name: one: two\nsticking: R\n'),
    at: 'content/cells/extra.yaml:1:7',
    says: /colon and a space in it/,
    hint: /quotes: name: "one: two"/,
  },
  {
    name: 'a line without a colon',
    changes: cell('name: x\nsticking\n'),
    at: 'content/cells/extra.yaml:2:1',
    says: /"sticking" is no line of the form/,
  },
  {
    name: 'a field that stands twice',
    changes: cell('name: x\nsticking: R\nname: y\n'),
    at: 'content/cells/extra.yaml:3:1',
    says: /"name" stands here a second time/,
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
