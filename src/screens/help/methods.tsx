/** "Methods and sources": made from the records that the app works with, so that it cannot drift from them. */
import { useEffect, useState } from "preact/hooks";
import { METHODS } from "../../science/methods/all.ts";
import type { MethodId } from "../../science/methods.ts";
import { type Mark, SOURCES, type SourceId } from "../../science/sources.ts";
import { MethodList } from "../findings/method-list.tsx";
import { SPECIALIST } from "../findings/specialist.ts";
import { useHouse } from "../parts/house.ts";
import { WriteLine } from "../parts/keys.tsx";
import { Page } from "../parts/page.tsx";
import { href } from "../parts/route.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { CHAPTERS, type Chapter } from "./chapters.ts";
import { findMethods, makeReady } from "./find-methods.ts";
import { Fold } from "./fold.tsx";
import { Growing } from "./growing.tsx";
import { METHODS_PAGE_WORDS } from "./words.methods.ts";
import { HELP_WORDS } from "./words.ts";
import "./help.css";

/** So many of each kind are drawn for one search: a slow phone must stay quick under the thumb. */
const MOST_SHOWN = 12;
const MARKS: readonly Mark[] = ["published", "common-practice", "not-checked", "derived"];

/** So long nothing is typed before it is looked for, milliseconds: letters must not wait for results. */
const QUIET_MS = 150;

/** What was typed, once the thumb rests. */
const useSettled = (typed: string): string => {
  const [settled, setSettled] = useState(typed);
  useEffect(() => {
    const waiting = setTimeout(() => setSettled(typed), QUIET_MS);
    return () => clearTimeout(waiting);
  }, [typed]);
  return settled;
};

/** The screen. */
export const MethodsScreen = () => {
  const { settings } = useHouse();
  const help = useWordsOf(HELP_WORDS);
  const words = useWordsOf(METHODS_PAGE_WORDS);
  const [query, setQuery] = useState("");
  const wanted = useSettled(query);
  const { language } = settings.value;
  const { marks } = SPECIALIST[language];
  useEffect(() => makeReady(language), [language]);
  const found = findMethods(wanted, language);
  return (
    <Page title={help.topics.methods.title} under={help.title} back={href({ at: "help" })} area="send">
      <p class="help-lead">{words.lead}</p>
      <p>{words.ahead}</p>
      <WriteLine label={words.search} hint={words.searchHint} value={query} onWrite={setQuery} />
      <p role="status">
        {found === null
          ? ""
          : found.methods.length + found.sources.length === 0
            ? words.foundNone
            : words.found(found.methods.length, found.sources.length)}
      </p>
      {found === null ? (
        <Growing
          of={CHAPTERS}
          each={(chapter) => (
            <Fold
              key={chapter.id}
              chapter
              title={words.chapters[chapter.id]}
              inside={() => <OneChapter chapter={chapter} />}
            />
          )}
          below={
            <>
              <h2>{words.marks}</h2>
              <dl class="symbols">
                {MARKS.map((mark) => (
                  <div class="symbol" key={mark}>
                    <dt>{marks[mark]}</dt>
                    <dd>{words.marksSay[mark]}</dd>
                  </div>
                ))}
              </dl>
            </>
          }
        />
      ) : (
        <>
          <MethodFolds key={`methods ${wanted}`} ids={found.methods.slice(0, MOST_SHOWN)} />
          <More of={found.methods.length} />
          {found.sources.length === 0 ? null : <h2>{words.sources}</h2>}
          <Sources key={`sources ${wanted}`} ids={found.sources.slice(0, MOST_SHOWN)} />
          <More of={found.sources.length} />
        </>
      )}
    </Page>
  );
};

const More = (props: { readonly of: number }) => {
  const words = useWordsOf(METHODS_PAGE_WORDS);
  return props.of > MOST_SHOWN ? <p>{words.more(props.of - MOST_SHOWN)}</p> : null;
};

const OneChapter = ({ chapter }: { readonly chapter: Chapter }) => {
  const words = useWordsOf(METHODS_PAGE_WORDS);
  return (
    <div class="fold-inside">
      <MethodFolds ids={chapter.methods} />
      <Fold
        title={words.sourcesOf(words.chapters[chapter.id])}
        inside={() => <Sources ids={chapter.sources} />}
      />
    </div>
  );
};

const MethodFolds = ({ ids }: { readonly ids: readonly MethodId[] }) => {
  const { methods } = SPECIALIST[useHouse().settings.value.language];
  return (
    <Growing
      of={ids}
      each={(id) => <Fold key={id} title={methods[id].title} inside={() => <OneMethod id={id} />} />}
    />
  );
};

const OneMethod = ({ id }: { readonly id: MethodId }) => (
  <div class="method-inside" data-method={id}>
    <MethodList methods={[id]} sources={METHODS[id].sources} />
  </div>
);

const Sources = ({ ids }: { readonly ids: readonly SourceId[] }) => (
  <ul class="source-list">
    <Growing of={ids} each={(id) => <OneSource key={id} id={id} />} />
  </ul>
);

const OneSource = ({ id }: { readonly id: SourceId }) => {
  const { marks } = SPECIALIST[useHouse().settings.value.language];
  return (
    <li data-source={id}>
      {SOURCES[id].citation}
      <small>
        {marks[SOURCES[id].mark]}
        {"address" in SOURCES[id] ? ` · ${SOURCES[id].address}` : ""}
      </small>
    </li>
  );
};
