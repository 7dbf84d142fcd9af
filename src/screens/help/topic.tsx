/** One page of help. */
import type { ComponentType } from "preact";
import { Key } from "../parts/keys.tsx";
import { Page } from "../parts/page.tsx";
import { type HelpTopic, href } from "../parts/route.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { CautionsHelp } from "./cautions.tsx";
import { HOLE_DRAWINGS } from "./drawings.hole.tsx";
import { LINE_DRAWINGS } from "./drawings.line.tsx";
import { RING_DRAWINGS } from "./drawings.ring.tsx";
import { Glossary } from "./glossary.tsx";
import { Rules } from "./rules.tsx";
import type { RuleGroup, TestHelp } from "./test-words.ts";
import { HELP_WORDS, type HelpWords } from "./words.ts";
import "./help.css";

/** Topics whose words come with help; "Methods and sources" is a screen of its own. */
type Topic = Exclude<HelpTopic, "methods">;

const DRAWINGS: Readonly<
  Record<"line" | "hole" | "ring", readonly [ComponentType, ComponentType, ComponentType]>
> = { line: LINE_DRAWINGS, hole: HOLE_DRAWINGS, ring: RING_DRAWINGS };

/** The screen of one topic. */
export const HelpTopicScreen = ({ topic }: { readonly topic: Topic }) => {
  const words = useWordsOf(HELP_WORDS);
  return (
    <Page
      title={titleOf(topic, words)}
      under={words.title}
      back={href({ at: "help" })}
      area="send"
      foot={history.length > 1 ? <Key onPress={() => history.back()}>{words.toBefore}</Key> : undefined}
    >
      <Inside topic={topic} words={words} />
    </Page>
  );
};

const titleOf = (topic: Topic, words: HelpWords): string => {
  if (topic === "line" || topic === "hole" || topic === "ring") return words.tests[topic].title;
  return words.topics[topic].title;
};

const Inside = ({ topic, words }: { readonly topic: Topic; readonly words: HelpWords }) => {
  switch (topic) {
    case "line":
    case "hole":
    case "ring":
      return <Test words={words.tests[topic]} drawings={DRAWINGS[topic]} />;
    case "cautions":
      return <CautionsHelp />;
    case "compare":
      return <Told lead={words.compare.lead} groups={words.compare.groups} />;
    case "keeping":
      return <Told lead={words.keeping.lead} groups={words.keeping.groups} />;
    case "locked":
      return <Told lead={words.asleep.lead} groups={words.asleep.groups} />;
    case "words":
      return <Glossary />;
  }
};

const Told = (props: { readonly lead: string; readonly groups: readonly RuleGroup[] }) => (
  <>
    <p class="help-lead">{props.lead}</p>
    <Rules groups={props.groups} />
  </>
);

const Test = (props: {
  readonly words: TestHelp;
  readonly drawings: readonly [ComponentType, ComponentType, ComponentType];
}) => (
  <>
    <p class="help-lead">{props.words.lead}</p>
    <div class="help-pictures">
      {props.drawings.map((Drawn, index) => (
        <figure key={index}>
          <Drawn />
          <figcaption>
            <b>{index + 1}</b>
            <span>{props.words.pictures[index]}</span>
          </figcaption>
        </figure>
      ))}
    </div>
    <Rules groups={props.words.rules} />
  </>
);
