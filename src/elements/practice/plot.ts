// A frame on the ground with leaves in it, of which the cover is to be judged.
import { html, svg, type TemplateResult } from 'lit';
import { plotOf, type Task } from '../../practice/index.ts';
import type { CoverClass } from '../../report/find/index.ts';
import type { PracticeWords } from '../../words/practice/index.ts';

const SIDE = 200;

export const plotFor = ({ specimen, truth }: Task) => plotOf(specimen.seed, Number(truth) as CoverClass);

export function renderPlot(task: Task, words: PracticeWords): TemplateResult {
  const { leaves } = plotFor(task);
  return html`<figure class="specimen" part="specimen">
    <div class="scene"><svg class="drawing plot" viewBox=${`0 0 ${SIDE} ${SIDE}`} role="img" aria-label=${words.plot}>
      <clipPath id="frame"><path d=${`M0 0H${SIDE}V${SIDE}H0Z`} /></clipPath>
      <g clip-path="url(#frame)">
        ${leaves.map(({ x, y, a, b, turn }) => svg`<ellipse class="leaf" rx=${(a * SIDE).toFixed(1)} ry=${(b * SIDE).toFixed(1)} transform=${`translate(${(x * SIDE).toFixed(1)} ${(y * SIDE).toFixed(1)}) rotate(${((turn * 180) / Math.PI).toFixed(0)})`} />`)}
      </g>
      <path class="line" d=${`M1 1H${SIDE - 1}V${SIDE - 1}H1Z`} />
    </svg></div>
  </figure>`;
}
