/** Words of fields that other screens say too. */
export const sharedFieldWords = () => ({
  fields: {
    stripDeleted: (name: string) => `${name} (deleted)`,
    sameAs: (from: string, to: string) => `${from} is the same as ${to}`,
  },
});
