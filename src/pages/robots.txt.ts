import { onSite, wholeAddress } from '../words/site.ts';

/** What robots may read: everything. Where the build knows the site's address, it says where the map of the site is. */
export function GET({ site }: { site: URL | undefined }): Response {
  const map = wholeAddress(onSite('/sitemap-index.xml'), site);
  const lines = ['User-agent: *', 'Allow: /', ...(map ? [`Sitemap: ${map}`] : [])];
  return new Response(`${lines.join('\n')}\n`, { headers: { 'content-type': 'text/plain; charset=utf-8' } });
}
