import type { AnyCalculator } from '../../calculators/define.ts';
import type { Level } from '../../calculators/practice/fade.ts';
import { makeQuestion, type Question } from '../../calculators/practice/make.ts';
import {
  markChoice,
  markNumber,
  markOrder,
  markRead,
  type Mark,
} from '../../calculators/practice/mark.ts';
import type { Plan } from '../../calculators/practice/plan.ts';
import { readHash } from '../../notebook/practice/address.ts';
import { nextExercise } from '../../notebook/practice/next.ts';
import { progressFile, takeProgressFile } from '../../notebook/practice/progress-file.ts';
import {
  clearProgress,
  keepRecord,
  readProgress,
  sitDown,
} from '../../notebook/practice/progress.ts';
import { newRecord, recordAfter, type PracticeRecord } from '../../notebook/practice/record.ts';
import type { Shelf } from '../../notebook/storage.ts';
import type { Sheet } from './sheet.ts';

/** Tries of other numbers where a draw finds none; one in thousands does. */
const tries = 8;

/** One reader at one page of practice: what is asked, what came of it, and what is kept of that. */
export class Session {
  readonly sheet: Sheet;
  readonly #calculators: Readonly<Record<string, AnyCalculator>>;
  readonly #shelf: Shelf;
  readonly #draw: () => number;
  readonly #asked: string[] = [];
  #sitting = 1;
  /** Whether the first answer to the question that stands has been counted. */
  #isCounted = false;
  #bringBack: (() => void) | undefined = $state.raw();

  records: Readonly<Record<string, PracticeRecord>> = $state.raw({});
  question: Question | undefined = $state.raw();
  /** How much of the working is shown with the question that stands. */
  level: Level = $state(0);
  /** Whether it was never asked before on this device: then one like it is shown worked. */
  isFirst = $state(false);
  mark: Mark | undefined = $state.raw();
  /** Counts what was checked, so that the same outcome twice is said twice. */
  checked = $state(0);
  /** Right, or given up. */
  isOver = $state(false);
  /** What the page says of the storage, of a link, of a file. */
  said = $state('');

  /**
   * @param draw gives a seed, another each time
   */
  constructor(
    sheet: Sheet,
    calculators: Readonly<Record<string, AnyCalculator>>,
    shelf: Shelf,
    draw: () => number,
  ) {
    this.sheet = sheet;
    this.#calculators = calculators;
    this.#shelf = shelf;
    this.#draw = draw;
  }

  get ids(): readonly string[] {
    return this.sheet.plans.map(({ id }) => id);
  }
  get calculator(): AnyCalculator | undefined {
    return this.#calculators[this.question?.plan.calculator ?? ''];
  }
  get isCleared(): boolean {
    return this.#bringBack !== undefined;
  }

  /** Sits down, at the exercise that the end of the address asks for, if any. */
  begin(hash: string, now: number): void {
    this.#sitting = sitDown(this.#shelf, now);
    const { records, damaged } = readProgress(this.#shelf);
    this.records = records;
    const notes = [this.#shelf.notice ?? ''];
    if (damaged.length > 0)
      notes.push(
        `What was kept of ${String(damaged.length)} of the exercises on this device is damaged. They begin anew; the damaged text is kept, and goes into the file.`,
      );
    this.goTo(hash, notes);
  }

  /** Asks what the end of an address names; else the next exercise. */
  goTo(hash: string, notes: readonly string[] = []): void {
    const asks = readHash(hash, this.ids);
    if (asks.is === 'nothing' || asks.is === 'unknown') this.next();
    else this.#ask(asks.id, asks.is === 'question' ? asks.seed : undefined);
    const say = 'say' in asks ? asks.say : undefined;
    this.said = [...notes, say ?? ''].filter((note) => note !== '').join(' ');
  }

  /** Asks the exercise whose turn it is. */
  next(): void {
    const id = nextExercise(this.ids, this.records, this.#sitting, this.#asked);
    if (id !== undefined) this.#ask(id);
    this.said = '';
  }

  planOf(id: string): Plan | undefined {
    return this.sheet.plans.find((plan) => plan.id === id);
  }

  #ask(id: string, seed?: number): void {
    const plan = this.planOf(id);
    const calculator = this.#calculators[plan?.calculator ?? ''];
    if (plan === undefined || calculator === undefined) return;
    this.question = this.#make(calculator, plan, seed);
    // A link gives everybody the same question with the same help: none of its own working.
    this.level = seed === undefined ? (this.records[id]?.level ?? 0) : 0;
    this.isFirst = this.records[id] === undefined;
    this.mark = undefined;
    this.isOver = false;
    this.#isCounted = false;
    this.#asked.push(id);
  }

  #make(calculator: AnyCalculator, plan: Plan, seed: number | undefined): Question {
    for (let turn = 0; ; turn += 1) {
      try {
        return makeQuestion(
          calculator,
          plan,
          turn === 0 && seed !== undefined ? seed : this.#draw(),
        );
      } catch (error) {
        if (!(error instanceof RangeError) || turn >= tries) throw error;
      }
    }
  }

  /** Marks an answer: text, or the place of what was chosen. The first that can be read is counted. */
  check(given: string | number | undefined): void {
    const { question, calculator } = this;
    if (question === undefined || calculator === undefined) return;
    const typed = typeof given === 'string' ? given : '';
    const place = typeof given === 'number' ? given : undefined;
    const mark =
      question.kind === 'number'
        ? markNumber(calculator, question, typed)
        : question.kind === 'read'
          ? markRead(question, typed)
          : question.kind === 'choice'
            ? markChoice(calculator, question, place)
            : markOrder(calculator, question, place);
    this.mark = mark;
    this.checked += 1;
    if (mark.outcome === 'unread') return;
    this.#count(mark.outcome === 'right');
    if (mark.outcome === 'right') this.isOver = true;
  }

  /** Shows the answer; counted as missed where nothing was answered before. */
  giveUp(): void {
    this.#count(false);
    this.isOver = true;
  }

  #count(isRight: boolean): void {
    const id = this.question?.plan.id;
    if (this.#isCounted || id === undefined) return;
    this.#isCounted = true;
    const record = recordAfter(this.records[id] ?? newRecord, isRight, this.#sitting);
    this.records = { ...this.records, [id]: record };
    keepRecord(this.#shelf, id, record);
    this.#bringBack = undefined;
    this.said = this.#shelf.notice ?? '';
  }

  /** Takes all progress away; {@link bringBack} undoes it as long as nothing more is answered. */
  clear(): void {
    this.#bringBack = clearProgress(this.#shelf);
    this.records = {};
    this.said = 'The progress on this device is cleared, of all topics.';
  }
  bringBack(): void {
    this.#bringBack?.();
    this.#bringBack = undefined;
    this.records = readProgress(this.#shelf).records;
    this.said = ['The progress is back.', this.#shelf.notice ?? ''].join(' ').trim();
  }
  file(now: Date): string {
    return progressFile(this.#shelf, now);
  }
  /** Takes the progress that was saved as a file, and says what came of it. */
  take(text: string): void {
    const came = takeProgressFile(this.#shelf, text);
    if (came === undefined) {
      this.said = 'This is no file of practice, or of another version. Nothing was changed.';
      return;
    }
    this.#bringBack = undefined;
    this.records = readProgress(this.#shelf).records;
    this.said = [
      `Taken from the file: ${String(came.taken)} of its exercises.`,
      came.left > 0 ? `${String(came.left)} stay: as much was answered here.` : '',
      came.unread > 0 ? `${String(came.unread)} could not be read and are left out.` : '',
      this.#shelf.notice ?? '',
    ]
      .filter((words) => words !== '')
      .join(' ');
  }
}
