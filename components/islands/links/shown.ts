import { differing, type LeadName, type LinkSettings, printSettings } from './settings.ts';

/** How wide flams are where nobody has chosen; the player's own default, whose storage a link must not load. */
export const USUAL_FLAM = 30;

const LEADS: Record<string, LeadName> = { written: 'right', left: 'left', alternating: 'alternating' };

/** How a bar begins by itself. */
export interface Beginning {
  tempo: number;
  lead: string;
}

/** What a player's form shows now, as far as it differs from how the bar begins by itself. */
export function shownSettings(form: HTMLFormElement, { tempo, lead }: Beginning): LinkSettings {
  const fields = new FormData(form);
  const number = (name: string) => Number(fields.get(name)) || undefined;
  const now = { tempo: number('tempo'), lead: LEADS[String(fields.get('lead'))], flam: number('flam') };
  return differing(now, { tempo, lead: lead as LeadName, flam: USUAL_FLAM });
}

/** The whole address of a link, with what the player beside it is set to. */
export function addressOf(link: HTMLAnchorElement, own: Beginning | undefined): string {
  const address = new URL(link.href);
  const form = link.closest('figure')?.querySelector<HTMLFormElement>('form.player');
  if (form && own) address.search = printSettings(shownSettings(form, own));
  return address.href;
}
