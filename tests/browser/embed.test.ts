import { createServer, type Server } from 'node:http';
import type { Page } from '@playwright/test';
import { listen } from '../../src/build/static-server.ts';
import { barriersOn } from './axe.ts';
import { expect, SCHOOL_NAME, test } from './site.ts';

const EMBED = 'embed/flam-drag-slow/';

/** A page of another site, with what its teacher put into it. */
async function otherSite(html: string): Promise<{ server: Server; address: string }> {
  const page = `<!doctype html><html lang="en"><title>Course</title><link rel="icon" href="data:,"><main>${html}</main></html>`;
  const server = createServer((_request, response) => {
    response.writeHead(200, { 'content-type': 'text/html; charset=utf-8' }).end(page);
  });
  const port = await listen(server, '127.0.0.1', 0);
  // Another name of this machine, so that it is another site and not only another port.
  return { server, address: `http://localhost:${port}/` };
}

/** What a teacher finds on the exercise's page: the frame and the script, as they are copied. */
async function snippets(page: Page, query = ''): Promise<{ frame: string; script: string }> {
  await page.goto(`./exercises/flam-drag-slow/${query}`);
  if (query) await expect(page.getByText(/^Set by the link/)).toBeVisible();
  await page.getByText('Put it into a course system').click();
  const frame = page.getByRole('textbox', { name: 'HTML of the frame' });
  await expect(page.locator('.embed-snippet iframe')).toBeVisible();
  await expect(frame).not.toHaveValue(/height="420"/);
  const script = page.getByRole('textbox', { name: 'Script that keeps the height right' });
  return { frame: await frame.inputValue(), script: await script.inputValue() };
}

test('an exercise stands alone: title, notation, player, and a way to the whole of it', async ({ page }) => {
  await page.goto(`./${EMBED}`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Four to the bar, slowly');
  await expect(page.getByRole('banner')).toHaveCount(0);
  await expect(page.getByRole('contentinfo')).toHaveCount(0);
  await expect(page.locator('meta[name=robots]')).toHaveAttribute('content', 'noindex');
  const whole = page.getByRole('link', { name: `The whole exercise at ${SCHOOL_NAME}` });
  await expect(whole).toHaveAttribute('href', /exercises\/flam-drag-slow\/$/);
  await expect(whole).toHaveAttribute('rel', /noopener/);
  expect(await barriersOn(page)).toEqual([]);
});

test('in a page of another site it plays, takes settings from its address and reports its height', async ({
  page,
  watched,
}) => {
  watched.expectFault(/request to another place: http:\/\/localhost/);
  const { frame, script } = await snippets(page, '?tempo=72&lead=left');
  expect(frame).toContain('/embed/flam-drag-slow/?tempo=72&amp;lead=left"');
  const { server, address } = await otherSite(`${frame}${script}`);
  await page.setViewportSize({ width: 420, height: 700 });
  await page.goto(address);
  const inside = page.frameLocator('iframe');
  await expect(inside.getByText('Set by the link: tempo 72, left lead.')).toBeVisible();
  await expect(inside.getByRole('spinbutton', { name: /^tempo/ })).toHaveValue('72');
  const content = () => inside.locator('html').evaluate((root) => Math.ceil(root.getBoundingClientRect().height));
  await expect
    .poll(async () => Number(await page.locator('iframe').getAttribute('height')) - (await content()))
    .toBe(0);
  const before = Number(await page.locator('iframe').getAttribute('height'));
  await inside.getByText('In words').click();
  await expect.poll(async () => Number(await page.locator('iframe').getAttribute('height'))).toBeGreaterThan(before);
  await inside.getByRole('button', { name: /^Play/ }).click();
  await expect(inside.getByText('Playing.')).toBeVisible();
  server.close();
});

test('a page takes the height from its own frame only', async ({ page, watched }) => {
  watched.expectFault(/request to another place: http:\/\/localhost/);
  const { frame, script } = await snippets(page);
  const foreign = `<iframe id="stranger" srcdoc="<script>parent.postMessage({ barwright: 'height', id: 'x', height: 9999 }, '*')</script>"></iframe>`;
  const { server, address } = await otherSite(`${script}${foreign}${frame}`);
  await page.goto(address);
  await expect(page.frameLocator('iframe[title]').getByRole('button', { name: /^Play/ })).toBeVisible();
  await expect(page.locator('iframe[title]')).not.toHaveAttribute('height', '9999');
  await expect(page.locator('#stranger')).not.toHaveAttribute('height');
  server.close();
});

test('a frame too low scrolls inside, and nothing is lost', async ({ page, watched, served }) => {
  watched.expectFault(/request to another place: http:\/\/localhost/);
  const { server, address } = await otherSite(
    `<iframe src="${served.address}${EMBED}" title="x" width="320" height="200"></iframe>`,
  );
  await page.goto(address);
  const inside = page.frameLocator('iframe');
  await inside.getByRole('link', { name: /^The whole exercise/ }).scrollIntoViewIfNeeded();
  await expect(inside.getByRole('link', { name: /^The whole exercise/ })).toBeInViewport();
  const sideways = await inside.locator('html').evaluate((root) => root.scrollWidth - root.clientWidth);
  expect(sideways).toBe(0);
  server.close();
});

test('where the browser keeps nothing for a frame, it plays and says so', async ({ page, watched, served }) => {
  watched.expectFault(/request to another place: http:\/\/localhost/);
  await page.addInitScript(() => {
    if (window === window.top) return;
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('blocked', 'SecurityError');
      },
    });
  });
  const { server, address } = await otherSite(
    `<iframe src="${served.address}${EMBED}?tempo=90" title="x" width="600" height="700" allow="autoplay"></iframe>`,
  );
  await page.goto(address);
  const inside = page.frameLocator('iframe');
  await expect(inside.getByText('Set by the link: tempo 90.')).toBeVisible();
  await inside.getByRole('button', { name: 'faster by one' }).click();
  await expect(inside.getByText(/does not let the site remember/)).toBeVisible();
  await inside.getByRole('button', { name: /^Play/ }).click();
  await expect(inside.getByText(/Playing\./)).toBeVisible();
  server.close();
});

test('in a frame without script the exercise can be read', async ({ page, watched, served }) => {
  watched.expectFault(/request to another place: http:\/\/localhost|Blocked script execution|woff2|ERR_FAILED/);
  const { server, address } = await otherSite(
    `<iframe src="${served.address}${EMBED}" title="x" width="600" height="500" sandbox="allow-popups"></iframe>`,
  );
  await page.goto(address);
  const inside = page.frameLocator('iframe');
  await expect(inside.getByRole('img').first()).toBeVisible();
  await expect(inside.getByRole('link', { name: /^The whole exercise/ })).toBeVisible();
  server.close();
});

test('the snippet can be reached by keyboard and is accessible', async ({ page }) => {
  await page.goto('./exercises/flam-drag-slow/');
  await page.locator('.embed-snippet summary').focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.embed-snippet iframe')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Copy the script' })).toBeVisible();
  expect(await barriersOn(page)).toEqual([]);
});
