/** How far bringing in or taking away has come. */
export const Working = (props: { readonly words: string; readonly share: number }) => (
  <div role="status">
    <p>{props.words}</p>
    <progress class="demo-progress" max={1} value={props.share} aria-label={props.words} />
  </div>
);
