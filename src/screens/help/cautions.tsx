/** All cautions, in the same words in which they are said before a test. */
import { type CautionName, isOfThisPlace } from "../parts/cautions-due.ts";
import { CAUTION_WORDS } from "../parts/words.cautions.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { Rules } from "./rules.tsx";
import { HELP_WORDS } from "./words.ts";

export const CautionsHelp = () => {
  const words = useWordsOf(HELP_WORDS).cautions;
  const cautions = useWordsOf(CAUTION_WORDS);
  const names = Object.keys(cautions.names) as CautionName[];
  const Said = (props: { readonly title: string; readonly ofPlace: boolean }) => (
    <section>
      <h2>{props.title}</h2>
      <dl class="help-cautions">
        {names
          .filter((name) => isOfThisPlace(name) === props.ofPlace)
          .map((name) => (
            <div key={name}>
              <dt>{cautions.names[name].what}</dt>
              <dd>{cautions.names[name].mind}</dd>
            </div>
          ))}
      </dl>
    </section>
  );
  return (
    <>
      <p class="help-lead">{cautions.local}</p>
      <Said title={words.place} ofPlace />
      <Said title={words.person} ofPlace={false} />
      <Rules groups={[{ title: words.figures, says: words.figuresSay }]} />
    </>
  );
};
