import { assess } from "@floorworthy/assess";
import { isUnable } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import { drawingToSvg, sheets } from "@floorworthy/papers";
import { drawingToDxf } from "@floorworthy/papers/dxf";
import { drawingToPdf } from "@floorworthy/papers/pdf";

export type Format = "pdf" | "svg" | "dxf";

export interface PaperWish {
  /** the job's text */
  readonly text: string;
  /** which sheet */
  readonly name: string;
  readonly format: Format;
  readonly paper: "letter" | "a4";
  /** printed on it, YYYY-MM-DD */
  readonly date: string;
  readonly units: Job["units"] | undefined;
}

export type Printed =
  | { readonly kind: "printed"; readonly bytes: Uint8Array }
  /** `late`: it might be printed at another time */
  | { readonly kind: "refused" | "late"; readonly words: string };

/** One sheet of a job as a file, or why there is none. Run in a worker, so that others are served meanwhile. */
export default async ({ text, name, format, paper, date, units }: PaperWish): Promise<Printed> => {
  const reading = readJob(text);
  if (!reading.ok) {
    const { path, message } = reading.issues[0]!;
    return { kind: "refused", words: `The job cannot be read yet: ${path} ${message}` };
  }
  const job = units ? { ...reading.job, units } : reading.job;
  const sheet = sheets.find((each) => each.name === name);
  if (!sheet) return { kind: "refused", words: "There is no such sheet." };
  const pages = sheet.draw(job, assess(job), { date, paper });
  if (isUnable(pages)) return { kind: "refused", words: pages.reason };
  const bytes = async (): Promise<Uint8Array> => {
    if (format === "pdf") return drawingToPdf(pages, { title: `${sheet.title}: ${job.title}`, date });
    if (format === "svg") return new TextEncoder().encode(drawingToSvg(pages[0]!));
    const plan = pages.find(({ items }) => items.some((item) => item.kind === "ground" && item.name === "plan"));
    return new TextEncoder().encode(plan ? drawingToDxf(plan, "plan") : "");
  };
  const made = await bytes();
  return made.length > 0
    ? { kind: "printed", bytes: made }
    : { kind: "refused", words: "This sheet has no plan to be handed on as DXF." };
};
