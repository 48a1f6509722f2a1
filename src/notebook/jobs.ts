import {
  exampleKey,
  isJobId,
  jobIds,
  jobKey,
  readShelf,
  setsKey,
  shelfOfJob,
  valueKey,
  type Shelf,
} from './storage.ts';
import { asVisit } from './visit.ts';
import {
  countValues,
  emptyContents,
  keptSets,
  parsed,
  writeValue,
  type Contents,
} from './values.ts';

/** What is written about a job beside its numbers. */
export interface About {
  readonly customer: string;
  readonly engine: string;
  readonly date: string;
  readonly who: string;
  readonly notes: string;
  /** To the customer. */
  readonly message: string;
}
export const aboutWords: Readonly<Record<keyof About, string>> = {
  customer: 'Customer',
  engine: 'Engine',
  date: 'Date',
  who: 'Done by',
  notes: 'Notes',
  message: 'Message to the customer',
};
export const aboutNames = Object.keys(aboutWords) as readonly (keyof About)[];
const nothing: About = { customer: '', engine: '', date: '', who: '', notes: '', message: '' };

/** One job on the device. */
export interface Job {
  /** Empty for the first. */
  readonly id: string;
  readonly label: string;
  readonly about: About;
  /** How many numbers of the reader's own it holds. */
  readonly numbers: number;
  /** Id of the layout of the crank, as chosen for the baseline. */
  readonly layout: string | undefined;
  /** True where the invented example stands for numbers that the reader has not typed. */
  readonly hasExample: boolean;
}

/** A job with all that it holds. */
export interface WholeJob extends Contents {
  readonly about: About;
  readonly hasExample: boolean;
}

/** The quantity that is no number and is told by itself. */
const layoutName = 'crankLayout';
const aboutKey = 'throwbook/1/about';
/** The jobs deleted last, newest first, each as it was. */
const deletedKey = 'throwbook/1/deleted';
const mostDeleted = 20;

interface Deleted extends WholeJob {
  readonly id: string;
}

/** Reads what is written about a job; what is damaged or missing is empty. */
export function asAbout(something: unknown): About {
  if (typeof something !== 'object' || something === null) return nothing;
  const found = something as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    aboutNames.map((name) => {
      const text = found[name];
      return [name, typeof text === 'string' ? text : ''];
    }),
  ) as unknown as About;
}

/** All jobs of the device, the first one first, the others by label. */
export function listJobs(device: Shelf): readonly Job[] {
  const [first = '', ...others] = jobIds(device);
  const jobs = others
    .map((id) => readJob(device, id))
    .sort(
      (one, other) => one.label.localeCompare(other.label, 'en') || (one.id < other.id ? -1 : 1),
    );
  return [readJob(device, first), ...jobs];
}

/** A job with all that it holds, as it is kept. */
export function wholeJob(device: Shelf, id: string): WholeJob {
  const shelf = shelfOfJob(id, device);
  const { job, values, sets } = readShelf(shelf);
  return {
    job,
    values,
    sets,
    about: asAbout(parsed(shelf.get(aboutKey))),
    hasExample: shelf.get(exampleKey) !== 'none',
  };
}

/** One job as a list shows it. */
export function readJob(device: Shelf, id: string): Job {
  const { job, values, about, hasExample } = wholeJob(device, id);
  const layouts = keptSets.flatMap((set) => values[set][layoutName]?.text ?? []);
  const numbers = countValues(values) - layouts.length;
  return { id, label: job, about, numbers, layout: values.baseline[layoutName]?.text, hasExample };
}

/** Writes what is said about a job. */
export function describeJob(device: Shelf, id: string, about: About): void {
  shelfOfJob(id, device).set(aboutKey, JSON.stringify(about));
}

/** Names a job. */
export function renameJob(device: Shelf, id: string, label: string): void {
  shelfOfJob(id, device).set(jobKey, label);
}

/** Lets the invented example stand for numbers that the reader has not typed, or for none. */
export function setExample(device: Shelf, id: string, hasExample: boolean): void {
  const shelf = shelfOfJob(id, device);
  if (hasExample) shelf.remove(exampleKey);
  else shelf.set(exampleKey, 'none');
}

/** An id that no job of the device has. */
function freshId(device: Shelf, random: () => number): string {
  const taken = new Set(jobIds(device));
  for (;;) {
    const id = Math.floor(random() * 36 ** 8)
      .toString(36)
      .padStart(8, '0');
    if (!taken.has(id)) return id;
  }
}

function fill(device: Shelf, id: string, whole: WholeJob): void {
  const { job, values, sets, about, hasExample } = whole;
  const shelf = shelfOfJob(id, device);
  shelf.set(jobKey, job);
  if (sets !== undefined) shelf.set(setsKey, JSON.stringify(sets));
  setExample(device, id, hasExample);
  if (aboutNames.some((name) => about[name] !== '')) describeJob(device, id, about);
  for (const set of keptSets)
    for (const [name, value] of Object.entries(values[set]))
      shelf.set(valueKey(set, name), writeValue(value));
}

/** Adds a job with all that it holds, and returns its id. */
export function addJob(device: Shelf, job: WholeJob, random: () => number = Math.random): string {
  const id = freshId(device, random);
  fill(device, id, job);
  return id;
}

/** Adds a job that came as a link, with its numbers alone, and returns its id. */
export function keepAsJob(device: Shelf, { job, values }: Contents): string {
  return addJob(device, { job, values, about: nothing, hasExample: true });
}

/**
 * Makes a job and returns its id: one without numbers, in which no invented ones stand either, or a copy.
 *
 * @param copied the id of the job that is copied, with all that is written about it
 */
export function makeJob(
  device: Shelf,
  label: string,
  copied?: string,
  random: () => number = Math.random,
): string {
  const whole =
    copied === undefined
      ? { ...emptyContents(), about: nothing, hasExample: false }
      : wholeJob(device, copied);
  return addJob(device, { ...whole, job: label }, random);
}

function deletedOn(device: Shelf): readonly Deleted[] {
  const all = parsed(device.get(deletedKey));
  return Array.isArray(all) ? (all as readonly unknown[]).flatMap(asDeleted) : [];
}

/** Reads a job that was put away; one that is damaged is none. */
function asDeleted(something: unknown): readonly Deleted[] {
  if (typeof something !== 'object' || something === null) return [];
  const { id, about, hasExample } = something as Readonly<Record<string, unknown>>;
  const contents = asVisit(something);
  if (contents === undefined || typeof id !== 'string') return [];
  const { job, values, sets } = contents;
  const kept = { job, values, ...(sets === undefined ? {} : { sets }) };
  return [{ id, ...kept, about: asAbout(about), hasExample: hasExample !== false }];
}

/** Deletes a job; the first is emptied, since it is always there. {@link bringBack} undoes it. */
export function deleteJob(device: Shelf, id: string): void {
  const shelf = shelfOfJob(id, device);
  const gone: Deleted = { id, ...wholeJob(device, id) };
  const deleted = JSON.stringify([gone, ...deletedOn(device)].slice(0, mostDeleted));
  device.set(deletedKey, deleted);
  for (const key of shelf.keys()) if (id !== '' || isOfJob(key)) shelf.remove(key);
  // A full storage has room for it now.
  device.set(deletedKey, deleted);
}

/** True for a key of the first job, and not of the device. */
function isOfJob(key: string): boolean {
  return (
    [jobKey, setsKey, aboutKey, exampleKey].includes(key) ||
    keptSets.some((set) => key.startsWith(valueKey(set, '')))
  );
}

/** The label of the job that was deleted last; undefined where none was. */
export function lastDeleted(device: Shelf): string | undefined {
  return deletedOn(device)[0]?.job;
}

/** Brings the job back that was deleted last, and returns its id; undefined where none was. */
export function bringBack(device: Shelf, random: () => number = Math.random): string | undefined {
  const [gone, ...others] = deletedOn(device);
  if (gone === undefined) return undefined;
  // Where something stands under its id again, it comes back beside that.
  const isFree = isJobId(gone.id) && readJob(device, gone.id).numbers === 0;
  const id = isFree ? gone.id : freshId(device, random);
  fill(device, id, gone);
  device.set(deletedKey, JSON.stringify(others));
  return id;
}
