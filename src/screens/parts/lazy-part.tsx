import type { ComponentChildren, ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";

/**
 * A part whose code is loaded when it is first shown. All code is on the device already, so this takes a
 * moment even without signal.
 *
 * @param meanwhile what stands in its place until then; it stays when the code is gone, because another
 *   window took a newer build
 */
export const lazyPart = <P extends object>(
  load: () => Promise<ComponentType<P>>,
  meanwhile: ComponentChildren = null,
): ComponentType<P> => {
  let loaded: ComponentType<P> | undefined;
  return (props: P) => {
    const [Part, setPart] = useState<{ readonly is: ComponentType<P> } | undefined>(
      loaded === undefined ? undefined : { is: loaded },
    );
    useEffect(() => {
      if (loaded !== undefined) return;
      load().then(
        (component) => {
          loaded = component;
          setPart({ is: component });
        },
        () => undefined,
      );
    }, []);
    return Part === undefined ? meanwhile : <Part.is {...props} />;
  };
};
