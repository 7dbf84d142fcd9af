/** A list that is drawn a few at a time, one lot for each picture of the screen: no touch has to wait for it. */
import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";

const AT_ONCE = 3;

export const Growing = <T,>(props: {
  readonly of: readonly T[];
  readonly each: (one: T) => ComponentChildren;
  /** What stands below the list, drawn once all of it is there: the list would push it down. */
  readonly below?: ComponentChildren;
}) => {
  const [count, setCount] = useState(AT_ONCE);
  const all = props.of.length;
  useEffect(() => {
    if (count >= all) return;
    const next = requestAnimationFrame(() => setCount(count + AT_ONCE));
    return () => cancelAnimationFrame(next);
  }, [count, all]);
  return (
    <>
      {props.of.slice(0, count).map(props.each)}
      {count < all ? null : props.below}
    </>
  );
};
