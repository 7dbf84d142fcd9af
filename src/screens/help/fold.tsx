/** A part of a page that is drawn when it is opened, and not before: the whole at once would hold up a phone. */
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

export const Fold = (props: {
  readonly title: string;
  readonly chapter?: boolean;
  readonly inside: () => ComponentChildren;
}) => {
  const [open, setOpen] = useState(false);
  return (
    <details
      class={`fold ${props.chapter === true ? "chapter" : ""}`}
      onToggle={(event) => {
        // The toggling of a fold inside this one comes by here as well in some engines.
        if (event.target === event.currentTarget) setOpen(event.currentTarget.open);
      }}
    >
      <summary>
        <span>{props.title}</span>
      </summary>
      {open ? props.inside() : null}
    </details>
  );
};
