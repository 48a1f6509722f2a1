import { asJobSets } from './job-sets.ts';
import { renamed } from './renamed.ts';
import {
  emptySets,
  isName,
  keptSets,
  parsed,
  parseValue,
  type Contents,
  type JobSets,
  type KeptSet,
} from './values.ts';

/** What the notebook asks of a browser's storage. */
export interface Shelf {
  get(key: string): string | undefined;
  /** Keeps the text; in memory when the browser refuses it. Never throws. */
  set(key: string, text: string): void;
  remove(key: string): void;
  /** All keys of what is kept here, those in memory included. */
  keys(): readonly string[];
  /** Another tab changed this key: what it stored is newer than what memory holds. */
  forget(key: string): void;
  /** One sentence when something could not be kept; undefined as long as all is well. */
  readonly notice: string | undefined;
}

const prefix = 'throwbook/1/';
/** What belongs to one job beside the first; its id and a slash follow, then the keys that the first job has. */
const jobsPrefix = `${prefix}jobs/`;
/** The id of the job that is open: in the tab's own storage, and on the device for the next tab. */
export const openJobKey = `${prefix}open`;
export const jobKey = `${prefix}job`;
/** Says `none` in a job where the invented example stands for no number that only the reader can have. */
export const exampleKey = `${prefix}example`;
/** Which sets the job has, what they are called and which two are shown. */
export const setsKey = `${prefix}sets`;
export const systemKey = `${prefix}system`;
/** The notebook that the last opened file or kept link replaced. */
export const previousKey = `${prefix}previous`;
/** In the tab's own storage: the steps back of a job. */
export function historyKey(id: string): string {
  return `${prefix}history/${id}`;
}
/** In the tab's own storage: the numbers of a link that is being visited. */
export const visitKey = `${prefix}visit`;

/** What is kept on a shelf: where its keys begin, and what is said where the browser keeps nothing. */
export interface Keeping {
  readonly prefix: string;
  readonly forbidden: string;
  readonly full: string;
}
const numbers: Keeping = {
  prefix,
  forbidden:
    'This browser does not let the page keep your numbers. They stay until the page is closed; save them as a file.',
  full: 'The storage of this browser is full. Your newest numbers stay until the page is closed; save them as a file.',
};

/** How a shelf asks the browser later than it is asked itself. */
export interface Late {
  /** Runs what it is given once there is time for it. */
  readonly soon: (run: () => void) => void;
  /** Hears that the notice has changed meanwhile. */
  readonly told: () => void;
}

/** The key of one value: `throwbook/1/baseline/pistonMass`. One key a value, so that two tabs never undo each other. */
export function valueKey(set: string, name: string): string {
  return `${prefix}${set}/${name}`;
}

/**
 * A shelf over a browser's storage. Everything that can be refused is caught: storage that is forbidden (its
 * mere mention throws in a frame of opaque origin), full, or taken away later. What cannot be stored is held
 * in memory, and one notice says so.
 *
 * @param find gives the storage; called once, may throw, may give nothing.
 * @param keeping the numbers of the notebook, where nothing else is said
 * @param late when the browser is asked; at once without it. Until then memory has what is to be kept
 */
export function openShelf(
  find: () => Storage | undefined,
  keeping: Keeping = numbers,
  late?: Late,
): Shelf {
  const memory = new Map<string, string | undefined>();
  const waiting = new Set<string>();
  let storage: Storage | undefined;
  let notice: string | undefined;
  try {
    storage = find();
    storage?.getItem(jobKey);
  } catch {
    storage = undefined;
  }

  function stored(key: string): string | undefined {
    try {
      return storage?.getItem(key) ?? undefined;
    } catch {
      return undefined;
    }
  }
  function storedKeys(): readonly string[] {
    const keys: string[] = [];
    try {
      for (let at = 0; storage !== undefined && at < storage.length; at += 1) {
        const key = storage.key(at);
        if (key?.startsWith(keeping.prefix) === true) keys.push(key);
      }
    } catch {
      // Storage was taken away while it was read: what was read so far is still true.
    }
    return keys;
  }

  function store(key: string, text: string): void {
    try {
      if (storage === undefined) throw new RangeError('no storage');
      storage.setItem(key, text);
      memory.delete(key);
    } catch {
      memory.set(key, text);
      notice = storage === undefined ? keeping.forbidden : keeping.full;
    }
  }
  function storeWaiting(): void {
    const before = notice;
    for (const key of waiting) store(key, memory.get(key) ?? '');
    waiting.clear();
    if (notice !== before) late?.told();
  }
  function drop(key: string): void {
    waiting.delete(key);
    memory.delete(key);
  }

  return {
    get: (key) => (memory.has(key) ? memory.get(key) : stored(key)),
    set(key, text) {
      if (late === undefined || storage === undefined) {
        store(key, text);
        return;
      }
      memory.set(key, text);
      if (waiting.size === 0) late.soon(storeWaiting);
      waiting.add(key);
    },
    remove(key) {
      drop(key);
      try {
        storage?.removeItem(key);
      } catch {
        memory.set(key, undefined);
      }
    },
    keys() {
      const all = new Set([...storedKeys(), ...memory.keys()]);
      return [...all].filter((key) => !memory.has(key) || memory.get(key) !== undefined);
    },
    forget: drop,
    get notice() {
      return notice;
    },
  };
}

/** True for a word that can name a job in a key; the first job's is empty. */
export function isJobId(id: string): boolean {
  return /^[a-z0-9]{0,20}$/.test(id);
}

/** A key as one job knows it; undefined for one of another job, and for what the device keeps for all. */
export function keyInJob(id: string, key: string): string | undefined {
  if (id === '') return key.startsWith(jobsPrefix) ? undefined : key;
  const own = `${jobsPrefix}${id}/`;
  return key.startsWith(own) ? prefix + key.slice(own.length) : undefined;
}

/** The ids of the jobs that anything is kept of; the first job's, which is always there, comes first. */
export function jobIds(device: Shelf): readonly string[] {
  const ids = device
    .keys()
    .filter((key) => key.startsWith(jobsPrefix))
    .map((key) => key.slice(jobsPrefix.length).split('/')[0] ?? '');
  return ['', ...new Set(ids.filter((id) => id !== '' && isJobId(id)))];
}

/**
 * What one job keeps, under the same keys as every other: each has a room of its own on the device's shelf, so that
 * two tabs on two jobs never meet. The system of units is the device's.
 */
export function shelfOfJob(id: string, device: Shelf): Shelf {
  const there = (key: string): string =>
    id === '' || key === systemKey ? key : `${jobsPrefix}${id}/${key.slice(prefix.length)}`;
  return {
    get: (key) => device.get(there(key)),
    set(key, text) {
      device.set(there(key), text);
    },
    remove(key) {
      device.remove(there(key));
    },
    keys: () => device.keys().flatMap((key) => keyInJob(id, key) ?? []),
    forget(key) {
      device.forget(there(key));
    },
    get notice() {
      return device.notice;
    },
  };
}

/** A notebook as found on a shelf, with a sentence for each value that could not be read. */
export interface Found extends Contents {
  readonly system: 'metric' | 'inch';
  readonly sets: JobSets;
  /** By storage key. The damaged text is left where it is until the reader replaces it. */
  readonly damaged: Readonly<Record<string, string>>;
}

/** Moves values that stand under a former name of their quantity to today's, unless one stands there already. */
export function renameOnShelf(shelf: Shelf): void {
  for (const [before, today] of renamed)
    for (const set of keptSets) {
      const text = shelf.get(valueKey(set, before));
      if (text === undefined) continue;
      // Taken away first: a full storage then has room for it.
      shelf.remove(valueKey(set, before));
      if (shelf.get(valueKey(set, today)) === undefined) shelf.set(valueKey(set, today), text);
    }
}

/** Reads the whole notebook. A damaged value is named and skipped; nothing is written. */
export function readShelf(shelf: Shelf): Found {
  const values = emptySets();
  const damaged: Record<string, string> = {};
  for (const key of shelf.keys()) {
    const place = placeOf(key);
    if (place === undefined) continue;
    const value = parseValue(shelf.get(key) ?? '');
    if (value === undefined) damaged[key] = damageSentence(place.set, place.name);
    else values[place.set][place.name] = value;
  }
  return {
    job: shelf.get(jobKey) ?? '',
    system: shelf.get(systemKey) === 'inch' ? 'inch' : 'metric',
    values,
    sets: asJobSets(parsed(shelf.get(setsKey))),
    damaged,
  };
}

/** The set and name that a storage key stands for; undefined for a key of another sort. */
export function placeOf(key: string): { readonly set: KeptSet; readonly name: string } | undefined {
  const set = keptSets.find((one) => key.startsWith(`${prefix}${one}/`));
  if (set === undefined) return undefined;
  const name = key.slice(prefix.length + set.length + 1);
  return isName(name) ? { set, name } : undefined;
}

function damageSentence(set: string, name: string): string {
  return `The stored value of ${name} (${set}) is damaged. The example stands in its place until you type a new one.`;
}
