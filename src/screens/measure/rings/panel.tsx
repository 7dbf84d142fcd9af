/** The frame of a panel: a question above, keys under the thumb. */
import type { ComponentChildren } from "preact";

export const Panel = (props: {
  readonly question: string;
  readonly hint?: string;
  readonly wrong?: boolean;
  readonly above?: ComponentChildren;
  readonly children: ComponentChildren;
}) => (
  <>
    <main class="running ring-top">
      <h2 class="running-question" tabIndex={-1}>
        {props.question}
      </h2>
      <p role="status" class={props.wrong === true ? "wrong" : "ring-hint"}>
        {props.hint ?? ""}
      </p>
      {props.above}
    </main>
    <div class="count-keys panel">{props.children}</div>
  </>
);
