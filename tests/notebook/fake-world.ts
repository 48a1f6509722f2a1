import type { World } from '../../src/notebook/world.ts';

/** A storage in memory that can be filled up, forbidden or emptied. */
export class FakeStorage implements Storage {
  readonly kept = new Map<string, string>();
  full = false;
  broken = false;

  get length(): number {
    this.#check();
    return this.kept.size;
  }
  key(index: number): string | null {
    return [...this.kept.keys()][index] ?? null;
  }
  getItem(key: string): string | null {
    this.#check();
    return this.kept.get(key) ?? null;
  }
  setItem(key: string, value: string): void {
    this.#check();
    if (this.full) throw new DOMException('no room', 'QuotaExceededError');
    this.kept.set(key, value);
  }
  removeItem(key: string): void {
    this.#check();
    this.kept.delete(key);
  }
  clear(): void {
    this.kept.clear();
  }
  #check(): void {
    if (this.broken) throw new DOMException('forbidden', 'SecurityError');
  }
}

/** One tab of a browser: its address, its own storage, and the storage it shares with other tabs. */
export class FakeTab implements World {
  readonly shared: FakeStorage;
  readonly own = new FakeStorage();
  fragment = '';
  revisited = false;
  forbidden = false;

  constructor(shared = new FakeStorage(), fragment = '') {
    this.shared = shared;
    this.fragment = fragment;
  }
  local(): Storage {
    if (this.forbidden) throw new DOMException('opaque origin', 'SecurityError');
    return this.shared;
  }
  session(): Storage {
    if (this.forbidden) throw new DOMException('opaque origin', 'SecurityError');
    return this.own;
  }
  hash(): string {
    return this.fragment;
  }
  address(): string {
    return 'https://shop.example/bobweight/';
  }
  dropHash(): void {
    this.fragment = '';
  }
}
