/** A key of the job file as a person says it: `nominalEmbedment` → "nominal embedment". */
export const labelOf = (key: string): string => key.replace(/([a-z])([A-Z])/g, (_, a, b) => `${a} ${b.toLowerCase()}`);
