/** How much of a page its foot covers, told to the style sheets: what is scrolled to may not end under the foot. */
import type { RefObject } from "preact";
import { useEffect, useRef } from "preact/hooks";

/**
 * For the foot of a page that scrolls as a whole. Its height is told by a sheet of its own, because no element of
 * the page may have style in itself; a browser that takes none scrolls as it always did.
 *
 * @param scrolls false where the foot stands in a part that scrolls by itself
 */
export const useFootRoom = (scrolls: boolean): RefObject<HTMLDivElement | null> => {
  const foot = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const all = foot.current;
    if (all === null || !scrolls || !("adoptedStyleSheets" in document)) return;
    const sheet = new CSSStyleSheet();
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    const seen = new ResizeObserver(() => {
      // Where little is seen of a page only the keys of its foot stay.
      const stays = getComputedStyle(all).display === "contents" ? all.querySelector(".actions") : all;
      const height = Math.ceil(stays?.getBoundingClientRect().height ?? 0);
      sheet.replaceSync(`:root { --foot: ${height}px; }`);
    });
    for (const one of [all, ...all.children]) seen.observe(one);
    return () => {
      seen.disconnect();
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
    };
  }, [scrolls]);
  return foot;
};
