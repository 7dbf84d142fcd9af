/** Help: what it holds. Every page of it has an address and opens without signal. */
import { useHouse } from "../parts/house.ts";
import { Page } from "../parts/page.tsx";
import { HELP_TOPICS, href } from "../parts/route.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { HELP_WORDS } from "./words.ts";
import "./help.css";

/** The list of topics. */
export const HelpScreen = () => {
  const words = useWordsOf(HELP_WORDS);
  const { common } = useHouse().words.value;
  return (
    <Page title={words.title} under={common.product} back={href({ at: "send" })} area="send">
      <p>{words.under}</p>
      <ul class="rows">
        {HELP_TOPICS.map((topic) => (
          <li key={topic}>
            <a class="row" href={href({ at: "help-topic", topic })}>
              <span>
                <b>{words.topics[topic].title}</b>
                <small>{words.topics[topic].hint}</small>
              </span>
            </a>
          </li>
        ))}
      </ul>
    </Page>
  );
};
