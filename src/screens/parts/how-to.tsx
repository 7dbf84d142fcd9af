/** Leads to the page of help that belongs to a screen. */
import { useHouse } from "./house.ts";
import { LinkKey } from "./keys.tsx";
import { type HelpTopic, href } from "./route.ts";

export const HowTo = (props: { readonly topic: HelpTopic }) => (
  <div class="ruled beside">
    <LinkKey to={href({ at: "help-topic", topic: props.topic })}>
      {useHouse().words.value.common.howTo}
    </LinkKey>
  </div>
);
