import { describe, expect, test } from 'vitest';
import { filesOf, SCHOOL } from '../helpers/built-site.ts';
import { readSite } from '../helpers/links.ts';

const html = readSite(SCHOOL).html.get('lessons/seen/')!;
const files = filesOf(SCHOOL).map((file) => `${SCHOOL.base}${file}`);

const element = (pattern: RegExp) => pattern.exec(html)?.[0] ?? '';
const attribute = (text: string, name: string) => new RegExp(`\\b${name}="([^"]*)"`).exec(text)?.[1];

describe('a picture', () => {
  const picture = () => element(/<img [^>]*Two hands[^>]*>/);

  test('has its width and height before it loads', () => {
    const [width, height] = ['width', 'height'].map((name) => Number(attribute(picture(), name)));
    expect(width / height).toBeCloseTo(1.5, 2);
  });

  test('comes in several sizes, none wider than a page needs, all of them files of the site', () => {
    const offered = attribute(picture(), 'srcset')!.split(', ');
    expect(offered.map((one) => one.split(' ')[1])).toEqual(['480w', '960w', '1440w', '1920w']);
    for (const one of offered) expect(files).toContain(one.split(' ')[0]);
  });

  test('has a text for screen readers and a caption', () => {
    expect(attribute(picture(), 'alt')).toBe('Two hands, the left one low.');
    expect(html).toMatch(/<figcaption>Ready\.<\/figcaption>/);
  });
});

test('a heading has a link to copy, named after it', () => {
  expect(html).toMatch(/<h2 id="hand--foot">Hand &amp; foot<\/h2>/);
  expect(html).toMatch(/<a href="#hand--foot" aria-label="Copy link: Hand &amp; foot"/);
});

describe('a film', () => {
  const film = () => element(/<video [^>]*Four of them[\s\S]*?<\/video>/);

  test('has controls and a name, loads nothing by itself and never starts by itself', () => {
    expect(film()).toMatch(/<video controls playsinline preload="none" aria-label="Four of them, from the side\."/);
    expect(html).not.toMatch(/autoplay/);
  });

  test('its file, its poster and its captions are files of the site', () => {
    for (const name of ['src', 'poster']) expect(files).toContain(attribute(film(), name));
    expect(files).toContain(attribute(element(/<track [^>]*>/), 'src'));
  });

  test('has the size of its poster, or of the shape that is written', () => {
    expect(Number(attribute(film(), 'width')) / Number(attribute(film(), 'height'))).toBeCloseTo(1.5, 2);
    expect(element(/<video [^>]*once more[^>]*>/)).toMatch(/width="960" height="720"/);
  });

  test('has a caption, which replaces it on paper', () => {
    expect(html).toMatch(/<figcaption>[\s\S]*?print-only[\s\S]*?Four of them, from the side\.[\s\S]*?<\/figcaption>/);
  });
});

test('what to listen to follows the lesson', () => {
  const section = element(/<section class="listen">[\s\S]*?<\/section>/);
  expect(section).toMatch(/Listen to/);
  expect(section).toMatch(/The march on our shelf[\s\S]*1:24[\s\S]*The left hand\./);
  expect(section).toMatch(/A door that shuts/);
  expect(section).not.toMatch(/href/);
});

test('the page asks no other host for anything', () => {
  expect(html).not.toMatch(/(?:src|srcset|poster)="(?:https?:)?\/\//);
});
