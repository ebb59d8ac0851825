import { useState } from "react";
import { bringManual } from "../api/manuals.ts";
import { go } from "../route.ts";

/** The floor page need not be typed: the manual is read, and a person confirms each value beside its line. */
export const BringManual = ({ lift }: { lift: string }) => {
  const [state, setState] = useState<"waiting" | "sending" | { readonly fault: string }>("waiting");
  const bring = (file: File) => {
    setState("sending");
    bringManual(lift, file)
      .then(({ hash }) => go(`/lifts/${encodeURIComponent(lift)}/manual/${hash}`))
      .catch((error: Error) => setState({ fault: error.message }));
  };
  return (
    <section className="say">
      <label className="open-file">
        Read it from the manual (PDF)
        <input
          type="file"
          accept="application/pdf,.pdf"
          onChange={({ target }) => {
            const file = target.files?.[0];
            if (file) bring(file);
            target.value = "";
          }}
        />
      </label>{" "}
      {state === "sending" && <span role="status">Sending the manual …</span>}
      {typeof state === "object" && <p role="alert">{state.fault}</p>}
    </section>
  );
};
