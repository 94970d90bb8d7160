package e2e

import (
	"strings"
	"testing"
)

// TestTerms taps words that a parent may not know: the page says what they mean, in the words of
// the glossary, also without a signal. Every rule has such words.
func TestTerms(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.open(s.address)
	p.wait("everything to be kept", kept)
	said := eval[map[string]string](p, `(async () => {
		const page = await `+documentOf(`"lessons/glossary.html"`)+`;
		const packed = (await fetch(document.documentElement.dataset.catalogue)).body.pipeThrough(new DecompressionStream("gzip"));
		const { rules } = await new Response(packed).json();
		const anchor = n => "t-" + n.toLowerCase().match(/[a-z0-9]+/g).join("-");
		return Object.fromEntries([...rules.map(r => r.name), "Juz", "Surah", "Mushaf"].map(n => [n, page.getElementById(anchor(n))?.querySelector("dd")?.textContent ?? ""]));
	})()`)
	for name, words := range said {
		if words == "" {
			t.Errorf("the glossary does not explain %q where the app looks for it", name)
		}
	}
	s.stop()
	p.clickOn(".first " + hook("term"))
	p.wait("what a juz is", visible(hook("notice-term")))
	if got := p.text(hook("notice-term")); !strings.HasPrefix(got, "Juz: "+said["Juz"]) {
		t.Errorf("of a juz is said %q", got)
	}
	p.click("notice-close")
	p.click("begin")
	p.wait("the first days", visible(hook("settled")))
	p.click("settled")
	p.wait("a rule to teach", visible(hook("next-teach")))
	p.clickOn(hook("next-teach") + " " + hook("term"))
	p.wait("what the rule means", visible(hook("notice-term")))
	name, words, _ := strings.Cut(p.text(hook("notice-term")+" p"), ": ")
	if words == "" || said[name] != words {
		t.Errorf("of %q is said %q, want %q", name, words, said[name])
	}
	p.calm()
}
