import type { WrittenTree } from "@floorworthy/job/listing";
import { createContext, useContext } from "react";
import type { Mistake, Units } from "../work/messages.ts";

/** What every field of the form needs of the document it writes into. */
export interface FormContext {
  readonly tree: WrittenTree;
  readonly change: (words: string, make: (text: string) => string) => void;
  readonly mistakes: readonly Mistake[];
  readonly units: Units;
  /** may it be written into */
  readonly hand: "writes" | "only-looks";
  /** put before the path of a fact to name its field, where one fact has fields in two places of the page */
  readonly prefix?: string;
}

const Context = createContext<FormContext | undefined>(undefined);
export const FormProvider = Context.Provider;

export const useForm = (): FormContext => {
  const form = useContext(Context);
  if (!form) throw new Error("A field stands outside a form.");
  return form;
};

/** The name of the field for a path, unique on the page. */
export const fieldId = ({ prefix = "" }: FormContext, path: string): string => `${prefix}${path}`;

/** What is wrong at a place, all of it, in words. */
export const mistakesAt = (mistakes: readonly Mistake[], path: string): string =>
  mistakes
    .filter((mistake) => mistake.path === path || mistake.path === `${path}.value`)
    .map(({ message, hint }) => `${message}${hint ? ` ${hint}` : ""}`)
    .join(" ");
