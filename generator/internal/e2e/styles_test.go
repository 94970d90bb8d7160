package e2e

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"
)

// ruleNames makes look in every document: the selectors of the style sheets it has, and those that
// an element matches, each with its sheet's name before it. A selector counts without what follows
// the pointer and the keyboard, and a pseudo-element counts as what it belongs to.
const ruleNames = `{
	const split = s => {
		const out = [""];
		let deep = 0;
		for (const c of s) {
			deep += "([".includes(c) ? 1 : ")]".includes(c) ? -1 : 0;
			if (c === "," && !deep) out.push("");
			else out[out.length - 1] += c;
		}
		return out.map(x => x.trim());
	};
	const plain = s => s.replace(/::[\w-]+(\([^)]*\))?|:(hover|active|focus-visible|focus-within|focus)\b/g, "")
		.replace(/(^|[>+~\s])$/, "$1*");
	const of = list => [...list].flatMap(r => r instanceof CSSStyleRule ? [...split(r.selectorText), ...of(r.cssRules)] : r.cssRules ? of(r.cssRules) : []);
	const named = sheet => of(sheet.cssRules).map(s => [sheet.href.replace(/.*\/([\w-]+)\.[^/]*$/, "$1: ") + s, plain(s)]);
	const all = () => new Map([...document.styleSheets].filter(s => s.href).flatMap(named));
	const gone = new Set();
	globalThis.look = (...docs) => {
		const rules = [...all()];
		if (!docs.length) docs = [document];
		const met = rules.filter(([, s]) => docs.some(d => d.querySelector(s))).map(r => r[0]);
		return { all: rules.map(r => r[0]), met: [...met, ...gone] };
	};
	// What is set only to be measured is gone before anybody can look.
	const remove = Element.prototype.remove;
	Element.prototype.remove = function () {
		if (this.closest(".print-measure")) look().met.forEach(s => gone.add(s));
		remove.call(this);
	};
}`

// looks gathers what is in use over all screens.
type looks struct{ all, met map[string]bool }

type looked struct{ All, Met []string }

func (l *looks) add(x looked) {
	for _, s := range x.All {
		l.all[s] = true
	}
	for _, s := range x.Met {
		l.met[s] = true
	}
}

// page is newPage with look.
func (l *looks) page(t *testing.T, scripts ...string) *page {
	p := newPage(t)
	for _, s := range append(scripts, ruleNames) {
		p.before(s)
	}
	return p
}

// see looks at the page as it stands, once what is said to be there is.
func (l *looks) see(p *page, what, there string) {
	p.t.Helper()
	p.wait(what, `(`+there+`) && (globalThis.looked = look(), true)`)
	l.add(eval[looked](p, `looked`))
	p.photo("styles-" + strings.ReplaceAll(what, " ", "-"))
}

// at goes to an address of the app that is open.
func (l *looks) at(p *page, what, hash, there string) {
	p.t.Helper()
	eval[any](p, fmt.Sprintf(`(location.hash = %q, 0)`, hash))
	l.see(p, what, there)
}

// TestStylesInUse goes through all screens and pages in all their states: every selector of every
// style sheet matches an element somewhere.
func TestStylesInUse(t *testing.T) {
	l := &looks{map[string]bool{}, map[string]bool{}}
	l.faults(t)
	s := serve(t, "/", built(t))
	p := l.page(t)
	l.pages(p, s)
	l.day(p, s)
	l.session(p, s)
	l.record(p, s)
	l.learner(p)
	l.handed(p)
	l.print(l.page(t), s)

	for _, name := range slices.Sorted(maps.Keys(l.all)) {
		if !l.met[name] {
			t.Errorf("no element is found for %s", name)
		}
	}
	if len(l.all) < 300 {
		t.Errorf("only %d selectors were seen", len(l.all))
	}
	t.Logf("%d selectors, %d in use", len(l.all), len(l.met))
}
