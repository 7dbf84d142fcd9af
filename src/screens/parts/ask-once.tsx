/** Deleting asks once, and says that it can be taken back. */
import { useState } from "preact/hooks";
import { useHouse } from "./house.ts";
import { Key } from "./keys.tsx";

export const AskOnce = (props: {
  readonly label: string;
  readonly question: string;
  readonly hint: string;
  readonly yes: string;
  readonly onYes: () => Promise<void>;
}) => {
  const words = useHouse().words.value.common;
  const [asking, setAsking] = useState(false);
  if (!asking)
    return (
      <Key look="danger" onPress={() => setAsking(true)}>
        {props.label}
      </Key>
    );
  return (
    <fieldset>
      <legend class="question">{props.question}</legend>
      <p>{props.hint}</p>
      <div class="keys two">
        <Key onPress={() => setAsking(false)}>{words.keep}</Key>
        <Key look="danger" onPress={() => void props.onYes().then(() => setAsking(false))}>
          {props.yes}
        </Key>
      </div>
    </fieldset>
  );
};
