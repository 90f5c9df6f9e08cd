import { also, here, type Planted } from './planted.ts';
import { lesson, LESSON } from '../plant.ts';

const BESIDE = LESSON.replace('index.mdx', '');

/** In pictures and films that lie beside a lesson. */
export const MEDIA: Planted[] = [
  {
    name: 'a Picture whose file is not there',
    changes: { ...also('<Picture file="./hand.jpg" text="A hand." />'), [`${BESIDE}hands.jpg`]: 'jpg' },
    at: here(10),
    says: /no file "\.\/hand\.jpg" beside this lesson/,
    hint: /did you mean "hands\.jpg"/,
  },
  {
    name: 'a Picture without words',
    changes: { ...also('<Picture file="hands.jpg" />'), [`${BESIDE}hands.jpg`]: 'jpg' },
    at: here(),
    says: /"text" is missing/,
  },
  {
    name: 'a Picture from another host',
    changes: also('<Picture file="https://elsewhere.example/hands.jpg" text="A hand." />'),
    at: here(10),
    says: /a picture that lies beside the lesson/,
  },
  {
    name: 'a Picture from another folder',
    changes: also('<Picture file="../02-second/hands.jpg" text="A hand." />'),
    at: here(10),
    says: /a picture that lies beside the lesson/,
  },
  {
    name: 'a film for a Picture',
    changes: { ...also('<Picture file="hands.mp4" text="A hand." />'), [`${BESIDE}hands.mp4`]: 'mp4' },
    at: here(10),
    says: /a picture that lies beside the lesson/,
  },
  {
    name: 'a Video whose file is not there',
    changes: also('<Video file="hands.mp4" text="A hand." />'),
    at: here(8),
    says: /no file "hands\.mp4" beside this lesson/,
    hint: /there are none yet/,
  },
  {
    name: 'a Video without words',
    changes: { ...also('<Video file="hands.mp4" />'), [`${BESIDE}hands.mp4`]: 'mp4' },
    at: here(),
    says: /"text" is missing/,
  },
  {
    name: 'a Video from another host',
    changes: also('<Video file="//elsewhere.example/hands.mp4" text="A hand." />'),
    at: here(8),
    says: /a film that lies beside the lesson/,
  },
  {
    name: 'a Video whose captions are not there',
    changes: {
      ...also('<Video file="hands.mp4" text="A hand." captions="hands.vtt" />'),
      [`${BESIDE}hands.mp4`]: 'mp4',
    },
    at: here(40),
    says: /no file "hands\.vtt" beside this lesson/,
  },
  {
    name: 'a Video whose poster is not there',
    changes: { ...also('<Video file="hands.mp4" text="A hand." poster="hands.jpg" />'), [`${BESIDE}hands.mp4`]: 'mp4' },
    at: here(40),
    says: /no file "hands\.jpg" beside this lesson/,
  },
  {
    name: 'something to listen to that has no title',
    changes: { [LESSON]: lesson('Some text.', { listen: '[{ at: "1:24" }]' }) },
    at: `${LESSON}:13:10`,
    says: /title/,
  },
  {
    name: 'a time mark that is none',
    changes: { [LESSON]: lesson('Some text.', { listen: '[{ title: Marches, at: the second half }]' }) },
    at: `${LESSON}:13:32`,
    says: /a time like 1:24/,
  },
];
