import { readJobFile } from "../read-job-file.ts";

export const validate = async (path: string): Promise<number> => {
  const job = await readJobFile(path);
  if (!job) return 2;
  console.log(`${path}: ${job.title}. Read without a mistake.`);
  return 0;
};
