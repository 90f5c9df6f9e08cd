/** Makes the questions of a page answerable: a choice pressed or a word typed is judged at once. */
import { plainAnswer } from '../../src/curriculum/plain-answer.ts';
import { NOTHING_GIVEN, rightSays, wrongSays } from '../../src/words/lessons.ts';

/** What the page says about a question, in the data attributes of its form. */
export interface QuestionData {
  /** The answer as it is shown. */
  answer: string;
  /** Every way to give it. */
  taken: string[];
  /** What helps after a wrong answer. */
  hint: string;
  /** Wrong answers that need a hint of their own, as `plainAnswer` makes them. */
  misses: Record<string, string>;
}

/** Wakes all questions of the page. */
export function askQuestions(page: ParentNode): void {
  for (const form of page.querySelectorAll<HTMLFormElement>('form[data-question]')) wake(form);
}

function wake(form: HTMLFormElement): void {
  const asked = JSON.parse(form.dataset.question ?? '') as QuestionData;
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const typed = form.querySelector('input');
    if (typed) judge(form, asked, typed.value);
  });
  for (const button of form.querySelectorAll<HTMLButtonElement>('button[type=button]'))
    button.addEventListener('click', () => mark(form, button, judge(form, asked, button.value)));
  form.dispatchEvent(new Event('awake', { bubbles: true }));
}

/** Says whether it is right; a right answer opens the reason. */
function judge(form: HTMLFormElement, asked: QuestionData, given: string): boolean {
  const plain = plainAnswer(given);
  const right = asked.taken.includes(plain);
  say(form, plain === '' ? NOTHING_GIVEN : right ? rightSays(asked.answer) : verdict(asked, given.trim(), plain));
  const reason = form.querySelector('details');
  if (reason && right) reason.open = true;
  return right;
}

/** That it is wrong, and what helps. */
function verdict({ answer, hint, misses }: QuestionData, given: string, plain: string): string {
  return `${wrongSays(given, answer)} ${Object.hasOwn(misses, plain) ? misses[plain] : hint}`;
}

function say(form: HTMLFormElement, words: string): void {
  const verdict = form.querySelector('[role=status]');
  if (verdict) verdict.textContent = words;
}

function mark(form: HTMLFormElement, pressed: HTMLButtonElement, right: boolean): void {
  for (const button of form.querySelectorAll('button[aria-pressed]'))
    button.setAttribute('aria-pressed', String(button === pressed));
  pressed.classList.add(right ? 'was-right' : 'was-wrong');
}
