import { readLift } from "@floorworthy/job";
import { writtenTree } from "@floorworthy/job/listing";
import { useMemo } from "react";
import type { Session } from "../api/session.ts";
import { FormProvider } from "../form/form-context.ts";
import { LiftForm } from "../form/lift-form.tsx";
import { ClashNotice, KeepingLine } from "../job/keeping-line.tsx";
import { type OpenDocument, useDocument } from "../job/use-document.ts";
import { mistakesOf } from "../work/mistakes-of.ts";
import { BringManual } from "./bring-manual.tsx";

/** One lift of the catalogue, typed from its maker's floor page. */
export const LiftPage = ({ id, session }: { id: string; session: Session }) => {
  const open = useDocument("lifts", id);
  if (open === undefined) return <p role="status">Fetching the lift …</p>;
  if ("fault" in open) return <p role="alert">{open.fault}</p>;
  return <Opened open={open} session={session} />;
};

const Opened = ({ open, session }: { open: OpenDocument; session: Session }) => {
  const hand = session.person?.role === "reader" ? ("only-looks" as const) : ("writes" as const);
  const { tree, mistakes, name } = useMemo(() => {
    const reading = readLift(open.text);
    return {
      tree: writtenTree(open.text),
      mistakes: reading.ok ? [] : mistakesOf(reading.issues),
      name: reading.ok ? reading.lift.name : "Lift",
    };
  }, [open.text]);
  const form = useMemo(
    () => ({ tree, change: open.change, mistakes, units: "inch-pound" as const, hand }),
    [tree, open.change, mistakes, hand],
  );
  return (
    <FormProvider value={form}>
      <main className="lift-page">
        <h2>{name}</h2>
        <KeepingLine open={open} hand={hand} />
        <ClashNotice open={open} />
        {mistakes.length > 0 && (
          <p role="status">
            {mistakes.length} to mend: {mistakes.map(({ path }) => path).join(", ")}
          </p>
        )}
        {hand === "writes" && <BringManual lift={open.id} />}
        <LiftForm path="lift" />
      </main>
    </FormProvider>
  );
};
