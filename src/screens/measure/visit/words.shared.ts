/** What several screens say of a visit; the rest comes with the screens of a visit. */
export const visitWords = () => ({ visit: { gone: "This visit is not on this device." } });
