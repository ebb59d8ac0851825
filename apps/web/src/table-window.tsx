import type { ReactNode } from "react";

/** A table that may be wider than the page: it scrolls inside its own window, by keyboard too. */
export const TableWindow = ({ name, children }: { readonly name: string; readonly children: ReactNode }) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
  <section className="table-window" tabIndex={0} aria-label={name}>
    <table>{children}</table>
  </section>
);
