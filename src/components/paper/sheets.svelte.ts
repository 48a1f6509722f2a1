import type { AnyCalculator } from '../../calculators/define.ts';
import type { Units } from '../../calculators/practice/draw.ts';
import { nextVariant, type Task, type Variant } from '../../calculators/practice/variants.ts';
import {
  kindWords,
  readCount,
  readSeed,
  readSheetHash,
  sheetHash,
  type Kind,
  type Printed,
  type SheetFields,
} from '../../notebook/practice/sheet-address.ts';
import type { Sheet } from '../practice/sheet.ts';

/** What the script of a page of exercise sheets is told. */
export interface SheetsOfTopic extends Sheet {
  /** Of the topic. */
  readonly title: string;
}

/** Sheets that were made, and what they were made of. */
interface Made {
  readonly seed: number;
  readonly units: Units;
  readonly variants: readonly Variant[];
}

/** What is chosen of an exercise sheet, and the sheets made of that. */
export class Sheets {
  readonly topic: SheetsOfTopic;
  readonly calculators: Readonly<Record<string, AnyCalculator>>;
  /** The kinds that the topic's exercises are of. */
  readonly kinds: readonly Kind[];
  readonly #usual: SheetFields;
  /** Counts the makings: one that is overtaken stops. */
  #making = 0;

  seed = $state('');
  count = $state('');
  chosen: Kind[] = $state([]);
  units: Units = $state('mixed');
  print: Printed = $state('all');
  seedProblem = $state('');
  countProblem = $state('');
  kindProblem = $state('');
  /** What is said of the address that was followed. */
  note = $state('');
  made: Made | undefined = $state.raw();
  /** While sheets are made: how many there are. */
  done: number | undefined = $state();

  /**
   * @param seed what stands in the field where the address names none
   */
  constructor(
    topic: SheetsOfTopic,
    calculators: Readonly<Record<string, AnyCalculator>>,
    seed: number,
  ) {
    this.topic = topic;
    this.calculators = calculators;
    const has = new Set(topic.plans.map(({ kind }) => kind));
    this.kinds = (Object.keys(kindWords) as Kind[]).filter((kind) => has.has(kind));
    this.#usual = {
      seed: String(seed),
      count: '1',
      kinds: ['number', 'choice'],
      units: 'mixed',
      print: 'all',
    };
  }

  /** Takes what the end of an address asks for, and makes it. */
  async follow(hash: string): Promise<void> {
    const { fields, say } = readSheetHash(hash, this.#usual);
    this.seed = fields.seed;
    this.count = fields.count;
    this.chosen = [...fields.kinds];
    this.units = fields.units;
    this.print = fields.print;
    this.note = say;
    await this.make();
  }

  /** The address of what is chosen. */
  get hash(): string {
    const { seed, count, chosen: kinds, units, print } = this;
    return sheetHash({ seed, count, kinds, units, print });
  }

  get #tasks(): readonly Task[] {
    return this.topic.plans.flatMap((plan) => {
      const calculator = this.calculators[plan.calculator];
      const isChosen = this.chosen.includes(plan.kind);
      return calculator !== undefined && isChosen ? [{ calculator, plan }] : [];
    });
  }

  /**
   * Makes the sheets. Where something cannot be read, says so and leaves what was made before.
   *
   * @returns whether they were made
   */
  async make(): Promise<boolean> {
    const turn = (this.#making += 1);
    this.done = undefined;
    const [seed, count] = [readSeed(this.seed), readCount(this.count)];
    const tasks = this.#tasks;
    this.seedProblem = seed.ok ? '' : seed.say;
    this.countProblem = count.ok ? '' : count.say;
    this.kindProblem =
      tasks.length > 0 ? '' : 'No kind of exercise is chosen that this topic has. Choose one.';
    if (!seed.ok || !count.ok || tasks.length === 0) return false;
    const draws = { seed: seed.value, units: this.units };
    const variants: Variant[] = [];
    while (variants.length < count.value) {
      variants.push(nextVariant(tasks, draws, variants));
      // A slow model takes its time: the page stays awake between two sheets.
      this.done = variants.length;
      await new Promise((resume) => setTimeout(resume));
      if (turn !== this.#making) return false;
    }
    this.made = { ...draws, variants };
    this.done = undefined;
    return true;
  }
}
