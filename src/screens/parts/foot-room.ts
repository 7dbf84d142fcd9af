/** How much of a page its foot covers, told to the style sheets: what is scrolled to may not end under the foot. */
import type { RefObject } from "preact";
import { useEffect, useRef } from "preact/hooks";

const FOOT = "--foot";

/**
 * For the foot of a page that scrolls as a whole.
 *
 * @param scrolls false where the foot stands in a part that scrolls by itself
 */
export const useFootRoom = (scrolls: boolean): RefObject<HTMLDivElement | null> => {
  const foot = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const { style } = document.documentElement;
    const all = foot.current;
    if (all === null || !scrolls) return;
    const seen = new ResizeObserver(() => {
      // Where little is seen of a page only the keys of its foot stay.
      const stays = getComputedStyle(all).display === "contents" ? all.querySelector(".actions") : all;
      style.setProperty(FOOT, `${Math.ceil(stays?.getBoundingClientRect().height ?? 0)}px`);
    });
    for (const one of [all, ...all.children]) seen.observe(one);
    return () => {
      seen.disconnect();
      style.removeProperty(FOOT);
    };
  }, [scrolls]);
  return foot;
};
