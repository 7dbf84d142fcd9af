/** Words of forms whose answers outlive their page. */
export const TYPED_WORDS = {
  en: () => ({
    brought: "Brought back what you had typed.",
    afresh: "Begin afresh",
    begun: "The form begins afresh.",
  }),
};
