// Some hosts let only trusted addresses be run as scripts (Trusted Types). Such a host allows the
// policies sutur, made here, and lit-html, which the templates make of what is in the scripts.
interface Policy {
  createScriptURL(url: string): string;
}
const { trustedTypes } = globalThis as {
  trustedTypes?: { createPolicy(name: string, rules: Policy): Policy };
};

/** The worker's own address is trusted, and no other. */
const policy = trustedTypes?.createPolicy('sutur', {
  createScriptURL: (url) => {
    const { origin, pathname } = new URL(url, location.href);
    if (origin !== location.origin || !pathname.endsWith('/sw.js'))
      throw new TypeError(`${url} is no script of this site`);
    return url;
  },
});

export const trusted = (url: string) => policy?.createScriptURL(url) ?? url;
