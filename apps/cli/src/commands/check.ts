import { type Assessment, assess } from "@floorworthy/assess";
import { answerLines } from "../print/answer.ts";
import { readJobFile } from "../read-job-file.ts";

export const check = async (path: string, options: { workings?: boolean; json?: boolean }): Promise<number> => {
  const job = await readJobFile(path);
  if (!job) return 2;
  const assessment = assess(job);
  console.log(
    options.json
      ? JSON.stringify(assessment, null, 2)
      : answerLines(assessment, options.workings ? "unfolded" : "folded").join("\n"),
  );
  return exitCode(assessment);
};

const exitCode = ({ outcome }: Assessment): number => (outcome === "accept" || outcome === "accept-if" ? 0 : 3);
