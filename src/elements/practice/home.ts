// Where a learner chooses: the course, then a round, the final test, the figures or the file.
import { html, type TemplateResult } from 'lit';
import type { Course } from '../../key/index.ts';
import type { View } from './feedback.ts';

export interface HomeDoes {
  readonly choose: (course: string) => void;
  readonly round: () => void;
  readonly test: () => void;
  /** A final test was begun and not finished. */
  readonly resumes: boolean;
  readonly figures: () => void;
  readonly file: () => void;
}

const inLanguage = (text: ReadonlyMap<string, string>, language: string): string =>
  text.get(language) ?? text.get(language.split('-')[0] ?? '') ?? text.values().next().value ?? '';

export const courseName = (course: Course, language: string): string => inLanguage(course.title, language);

export function renderHome(
  { words, saying }: View,
  course: Course,
  courses: readonly Course[],
  does: HomeDoes,
): TemplateResult {
  const { language } = saying;
  return html`<p>${words.intro}</p>
    <fieldset class="courses">
      <legend>${words.course}</legend>
      ${courses.map(
        (one) => html`<label class="card">
          <input type="radio" name="course" .value=${one.id} .checked=${one.id === course.id} @change=${() => does.choose(one.id)} />
          <span class="text"><span class="title">${courseName(one, language)}</span><span class="detail">${inLanguage(one.about, language)}</span></span>
        </label>`,
      )}
    </fieldset>
    <div class="ways">
      <div><button class="solid" type="button" @click=${does.round}>${words.round}</button><p class="quiet">${words.roundSays}</p></div>
      <div>
        <button class="outline" type="button" @click=${does.test}>${does.resumes ? words.resume : words.test}</button>
        <p class="quiet">${words.testSays(course.taxa.length * course.test.each)}</p>
      </div>
      <div class="pair">
        <button class="plain" type="button" @click=${does.figures}>${words.figures}</button>
        <button class="plain" type="button" @click=${does.file}>${words.file}</button>
      </div>
    </div>`;
}
