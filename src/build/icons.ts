import { readFile, writeFile } from 'node:fs/promises';
import type { AstroIntegration } from 'astro';
import { darkWarm } from '../curriculum/index.ts';
import { readSchool } from './school.ts';

/** The warm color in public/favicon.svg, on light and on dark. */
const WARM = '#a8431a';
const WARM_DARK = '#f0936a';
/** What stands around the icon on a phone's screen, which may not be clear. */
const PAPER = '#fbfaf4';

/** An integration that draws the icons of the site in the school's own color. */
export function icons(): AstroIntegration {
  return {
    name: 'icons',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const { colors } = readSchool(new URL('../../', import.meta.url));
        if (!colors || colors.warm.toLowerCase() === WARM) return;
        const drawn = await readFile(new URL('favicon.svg', dir), 'utf8');
        const icon = drawn.replace(WARM, colors.warm).replace(WARM_DARK, darkWarm(colors));
        await writeFile(new URL('favicon.svg', dir), icon);
        await writeFile(new URL('favicon.png', dir), await picture(icon, 48));
        const { default: sharp } = await import('sharp');
        const onPaper = sharp(await picture(icon, 124)).flatten({ background: PAPER });
        const edge = { top: 28, bottom: 28, left: 28, right: 28, background: PAPER };
        await writeFile(new URL('touch-icon.png', dir), await onPaper.extend(edge).png().toBuffer());
      },
    },
  };
}

/** An icon as a PNG of so many pixels, in its colors on light. */
async function picture(icon: string, pixels: number): Promise<Buffer> {
  const { default: sharp } = await import('sharp');
  const onLight = icon.replace(/@media[^{]*\{[^}]*\}[^}]*\}\s*\}/, '');
  return sharp(Buffer.from(onLight), { density: 300 }).resize(pixels, pixels).png().toBuffer();
}
