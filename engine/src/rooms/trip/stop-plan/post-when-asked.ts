/** amperes of a post that somebody looks for: common on sites in Britain and the rest of Europe (practice) */
export const POST_WHEN_ASKED = 10;
