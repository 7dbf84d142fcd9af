/** The frame of a screen: head with the way back, the leaf itself, and a foot that stays under the thumb. */
import { type ComponentChildren, createContext } from "preact";
import { useContext } from "preact/hooks";
import { useFootRoom } from "./foot-room.ts";
import { useHouse } from "./house.ts";
import { BackDrawing } from "./icons.tsx";
import { type Area, href } from "./route.ts";

const Areas = (props: { readonly here: Area }) => {
  const { words } = useHouse();
  const areas: readonly Area[] = ["measure", "fields", "findings", "send"];
  return (
    <nav class="areas" aria-label={words.value.areas.label}>
      {areas.map((area) => (
        <a key={area} href={href({ at: area })} aria-current={area === props.here ? "page" : undefined}>
          {words.value.areas[area]}
        </a>
      ))}
    </nav>
  );
};

/** True inside the list that stands left of its detail on a wide screen. */
export const ListPane = createContext(false);

/** A screen. `area` shows the four areas below (a running test hides them). */
export const Page = (props: {
  readonly title: string;
  readonly under?: string | undefined;
  readonly end?: ComponentChildren;
  /** Address of the screen that Back leads to when this one was opened by its address. */
  readonly back?: string;
  readonly area?: Area;
  /** Keys that stay under the thumb. */
  readonly foot?: ComponentChildren;
  readonly children: ComponentChildren;
}) => {
  const { words } = useHouse();
  const isList = useContext(ListPane);
  const foot = useFootRoom(!isList);
  // A page has one main part and one first heading: a list beside it has neither.
  const Leaf = isList ? "section" : "main";
  const Title = isList ? "h2" : "h1";
  return (
    <div class={`frame ${props.area === undefined ? "alone" : "with-areas"}`}>
      <header class="head">
        {props.back === undefined ? null : (
          <a class="back" href={props.back} aria-label={words.value.common.back}>
            <BackDrawing />
          </a>
        )}
        <div>
          <Title>{props.title}</Title>
          {props.under === undefined ? null : <p>{props.under}</p>}
        </div>
        {props.end === undefined ? null : <div class="head-end">{props.end}</div>}
      </header>
      <Leaf class="leaf" aria-label={isList ? props.title : undefined}>
        {props.children}
      </Leaf>
      <div class="foot" ref={foot}>
        {props.foot === undefined ? null : <div class="actions keys">{props.foot}</div>}
        {props.area === undefined || isList ? null : <Areas here={props.area} />}
      </div>
    </div>
  );
};
