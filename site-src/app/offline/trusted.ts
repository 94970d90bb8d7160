// The pages, and some hosts, let only trusted addresses be run as scripts, and only trusted text become
// markup (W3C, Trusted Types). They allow the policies sutur, made here, and lit-html, which the
// templates make of what is in the scripts.
interface Policy {
  createScriptURL(url: string): string;
  createHTML(text: string): string;
}
const { trustedTypes } = globalThis as {
  trustedTypes?: { createPolicy(name: string, rules: Policy): Policy };
};

const policy = trustedTypes?.createPolicy('sutur', {
  /** The worker's own address is trusted, and no other. */
  createScriptURL: (url) => {
    const { origin, pathname } = new URL(url, location.href);
    if (origin !== location.origin || !pathname.endsWith('/sw.js'))
      throw new TypeError(`${url} is no script of this site`);
    return url;
  },
  /** For pages of this site that are read and never shown. */
  createHTML: (text) => text,
});

export const trusted = (url: string) => policy?.createScriptURL(url) ?? url;

/** A document of this site's own page, in which nothing runs. */
export const parsed = (page: string): Document =>
  new DOMParser().parseFromString(policy?.createHTML(page) ?? page, 'text/html');
