import type { StorageArea } from '../../src/storage/index.ts';

/** A storage area as browsers have it, with room for so many characters. */
export class FakeArea implements StorageArea {
  readonly kept = new Map<string, string>();
  room: number;
  constructor(kept: Record<string, string> = {}, room = Infinity) {
    Object.entries(kept).forEach(([key, text]) => this.kept.set(key, text));
    this.room = room;
  }
  getItem(key: string): string | null {
    return this.kept.get(key) ?? null;
  }
  setItem(key: string, text: string): void {
    if (text.length > this.room) throw new DOMException('full', 'QuotaExceededError');
    this.kept.set(key, text);
  }
  removeItem(key: string): void {
    this.kept.delete(key);
  }
}

/** An area as a browser gives it that blocks everything. */
export const blocked: StorageArea = {
  getItem() {
    throw new DOMException('blocked', 'SecurityError');
  },
  setItem() {
    throw new DOMException('blocked', 'SecurityError');
  },
  removeItem() {
    throw new DOMException('blocked', 'SecurityError');
  },
};
