import type { Box, ManualReading } from "@floorworthy/manuals";
import { drawLines, readManual } from "@floorworthy/manuals/node";
import type { Store } from "@floorworthy/store";

/** Manuals that were brought, read once and kept in mind while people confirm them. */
export interface ReadingDesk {
  /** undefined where there is no such file */
  readonly reading: (hash: string) => Promise<ManualReading | undefined>;
  /** PNG of a page, or of a part of it */
  readonly picture: (hash: string, page: number, box?: Box) => Promise<Uint8Array | undefined>;
}

const KEPT = 12;
const PICTURES = 40;

/** The newest of a few; the oldest makes way. */
const remembered = <T>(most: number) => {
  const all = new Map<string, Promise<T>>();
  return (key: string, make: () => Promise<T>): Promise<T> => {
    const there = all.get(key);
    if (there) return there;
    const made = make();
    all.set(key, made);
    made.catch(() => all.delete(key));
    for (const oldest of all.keys()) {
      if (all.size <= most) break;
      all.delete(oldest);
    }
    return made;
  };
};

export const openReadingDesk = (store: Store): ReadingDesk => {
  const readings = remembered<ManualReading | undefined>(KEPT);
  const pictures = remembered<Uint8Array | undefined>(PICTURES);
  const bytesOf = async (hash: string) => (await store.attachment(hash))?.bytes;
  const reading: ReadingDesk["reading"] = (hash) =>
    readings(hash, async () => {
      const bytes = await bytesOf(hash);
      return bytes && readManual(bytes);
    });
  const wholePage = async (hash: string, page: number): Promise<Box | undefined> => {
    const read = await reading(hash);
    const size = read?.ok ? read.pages.find(({ number }) => number === page) : undefined;
    return size && { x: 0, y: 0, width: size.width, height: size.height };
  };
  return {
    reading,
    picture: (hash, page, box) =>
      pictures(`${hash} ${page} ${JSON.stringify(box)}`, async () => {
        const part = box ?? (await wholePage(hash, page));
        const bytes = part && (await bytesOf(hash));
        return bytes && (await drawLines(bytes, [{ page, box: part }]))[0];
      }),
  };
};
