import { type ReactNode, useState } from "react";

/** Something to open. What is inside is drawn only once it has been opened, for a margin holds thousands of numbers. */
export const Fold = (props: {
  readonly name: string;
  readonly headName?: string;
  readonly head: ReactNode;
  readonly children: ReactNode;
}) => {
  const [opened, setOpened] = useState<"never" | "once">("never");
  return (
    <details className={props.name} onToggle={({ currentTarget }) => currentTarget.open && setOpened("once")}>
      <summary className={props.headName}>{props.head}</summary>
      {opened === "once" && props.children}
    </details>
  );
};
