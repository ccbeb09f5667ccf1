// Parts that come when somebody opens them: who helps, the report, and what stands at the foot.
import { html, nothing, type TemplateResult } from 'lit';
import type { Settings } from '../../contexts/index.ts';
import type { RequestName, Requests, Snapshot } from '../../session/index.ts';
import type { LatePart } from '../shared/late.ts';
import { renderCopy } from './copying.ts';
import { renderSettings } from './settings.ts';

/** What these need of the element they stand in. */
export interface Page {
  readonly host: {
    lang: string;
    units: string;
    requestUpdate(): void;
    readonly areas: string;
    readonly contactPhone: string;
    readonly contactEmail: string;
    readonly endpoint: string;
    readonly linkParameter: string;
  };
  readonly settings: Settings;
  /** Drawers that stand open. */
  readonly opened: Readonly<Partial<Record<LatePart, boolean>>>;
  toggle(part: LatePart, open: boolean): void;
  /** What is said where a part did not come. */
  missing(part: LatePart): TemplateResult;
  send<Name extends RequestName>(name: Name, detail: Requests[Name]): void;
}

const toggles =
  (part: LatePart, toggle: Page['toggle']) =>
  ({ currentTarget }: Event) =>
    toggle(part, (currentTarget as HTMLDetailsElement).open);

function renderDrawer(
  { opened, toggle, missing }: Page,
  part: LatePart,
  summary: string | TemplateResult,
  inside: TemplateResult,
): TemplateResult {
  return html`<details
    class=${part}
    @toggle=${toggles(part, toggle)}
  >
    <summary>${summary}</summary>
    ${opened[part] ? inside : nothing} ${missing(part)}
  </details>`;
}

export function renderNearby({ host, missing }: Page): TemplateResult {
  return html`<div class="help" tabindex="-1">
    <leadwort-nearby part="nearby" .areas=${host.areas} .contactPhone=${host.contactPhone} .contactEmail=${host.contactEmail}></leadwort-nearby>
    ${missing('nearby')}
  </div>`;
}

/** The branching key, drawn; `wide`: there is room beside the question, and it stands open. */
export function renderStream({ settings, toggle, missing }: Page, wide: boolean): TemplateResult {
  return html`<details class="stream" ?open=${wide} @toggle=${toggles('stream', toggle)}>
    <summary>${settings.words.key.stream}</summary>
    <leadwort-stream part="stream"></leadwort-stream>
    ${missing('stream')}
  </details>`;
}

export function renderReport(page: Page): TemplateResult {
  const { endpoint, contactEmail } = page.host;
  const { report } = page.settings.words;
  return renderDrawer(
    page,
    'report',
    html`${report.open} <span class="needs">${report.needs}</span>`,
    html`<leadwort-report part="report" endpoint=${endpoint} contact-email=${contactEmail}></leadwort-report>`,
  );
}

/** `restart` starts with a new plant; it does not wait for what is drawn here. */
export function renderFoot(page: Page, snapshot: Snapshot, restart: unknown): TemplateResult {
  const { host, settings, send } = page;
  const { key } = settings.words;
  return html`${renderDrawer(page, 'names', key.lookup, html`<leadwort-names></leadwort-names>`)}
    <div class="set">${renderSettings(host, snapshot, settings, send)}</div>
    ${host.linkParameter && snapshot.trail.length > 0 ? renderCopy(host.linkParameter, snapshot, settings) : nothing}
    ${restart}
    ${
      snapshot.prepared.key.couplets.length > 0
        ? renderDrawer(page, 'sheet', key.print, html`<leadwort-sheet></leadwort-sheet>`)
        : nothing
    }`;
}
