import type { Box, ManualReading } from "@floorworthy/manuals";
import { ask } from "./ask.ts";

const at = (lift: string): string => `/api/lifts/${encodeURIComponent(lift)}/manuals`;

/** Hands a manual to the server, which keeps it beside the lift and says by what fingerprint. */
export const bringManual = (lift: string, file: File): Promise<{ readonly hash: string }> => {
  const body = new FormData();
  body.append("file", file);
  return ask("POST", at(lift), body);
};

export interface ReadManual {
  readonly name: string;
  readonly reading: ManualReading;
}

export const readManual = (lift: string, hash: string): Promise<ReadManual> => ask("GET", `${at(lift)}/${hash}`);

/** Keeps the picture of a line beside the lift. */
export const keepPicture = (lift: string, hash: string, page: number, box: Box): Promise<{ readonly hash: string }> =>
  ask("POST", `${at(lift)}/${hash}/pictures`, { page, box });

export const pagePicture = (lift: string, hash: string, page: number): string => `${at(lift)}/${hash}/pages/${page}`;
