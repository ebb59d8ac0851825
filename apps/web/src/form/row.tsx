import type { ReactNode } from "react";

/** One line of the form: what it is, where it is written, and what was understood or is wrong. */
export const Row = (props: {
  readonly id: string;
  readonly label: string;
  readonly doc: string;
  readonly said: string;
  readonly wrong: boolean;
  readonly children: ReactNode;
}) => (
  <div className="row" data-wrong={props.wrong || undefined}>
    <label htmlFor={props.id}>
      {props.label}
      <span className="row-doc">{props.doc}</span>
    </label>
    <div className="row-hand">{props.children}</div>
    <p id={`${props.id}-said`} className="row-said">
      {props.said}
    </p>
  </div>
);
