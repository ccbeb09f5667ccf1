// The readable page, in place of the form while it is printed: the same as the file that the report is written to.
import { html, nothing, type TemplateResult } from 'lit';
import type { Report, Section } from '../../report/forms/index.ts';

/** `level` is that of the title's heading, 1 to 6. Pictures stand in canvases, to be drawn by their ids. */
export function renderPrinted({ title, language, lead, cautions, sections }: Report, level: number): TemplateResult {
  const [first, ...rest] = lead;
  const heading = (text: string) =>
    html`<div role="heading" aria-level=${Math.min(6, level + 1)} class="sub">${text}</div>`;
  return html`<div class="paper" lang=${language}>
    <p>${title}</p>
    <div role="heading" aria-level=${level} class="heading">${first}</div>
    ${rest.map((line) => html`<p>${line}</p>`)}
    ${
      cautions.items.length > 0
        ? html`<section class="cautions">${heading(cautions.heading)}
            <ul>${cautions.items.map((item) => html`<li>${item}</li>`)}</ul></section>`
        : nothing
    }
    ${sections.map((section) => renderSection(section, heading))}
  </div>`;
}

function renderSection(
  { heading: text, facts, table, notes, photos }: Section,
  heading: (text: string) => TemplateResult,
): TemplateResult {
  return html`<section>
    ${heading(text)}
    ${facts.length > 0 ? html`<dl>${facts.map(([label, value]) => html`<div><dt>${label}</dt><dd dir="auto">${value}</dd></div>`)}</dl>` : nothing}
    ${
      table
        ? html`<table>
            <thead><tr>${table.head.map((cell) => html`<th scope="col">${cell}</th>`)}</tr></thead>
            <tbody>${table.rows.map((row) => html`<tr>${row.map((cell, i) => (i === 0 ? html`<th scope="row" dir="auto">${cell}</th>` : html`<td dir="auto">${cell}</td>`))}</tr>`)}</tbody>
          </table>`
        : nothing
    }
    ${
      photos.length > 0
        ? html`<div class="prints">${photos.map(
            ({ photo, title }) => html`<figure>
              <canvas data-photo=${photo.id} width="4" height="3" role="img" aria-label=${title}></canvas>
              <figcaption dir="auto">${title}</figcaption>
            </figure>`,
          )}</div>`
        : nothing
    }
    ${notes.map((note) => html`<p dir="auto">${note}</p>`)}
  </section>`;
}
