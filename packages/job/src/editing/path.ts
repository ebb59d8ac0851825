/** `floor.readings[2].thickness` as its keys; undefined when it is not a path. */
export const parsePath = (path: string): readonly (string | number)[] | undefined => {
  if (!/^[A-Za-z][\w-]*(?:\.[A-Za-z][\w-]*|\[\d{1,4}\])*$/.test(path)) return undefined;
  return [...path.matchAll(/([A-Za-z][\w-]*)|\[(\d+)\]/g)].map(([, key, index]) => key ?? Number(index));
};
