package e2e

import (
	"context"
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"path"
	"strings"
	"time"

	"github.com/chromedp/chromedp"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/copies"
	"sutur/generator/internal/site"
)

// alive is true once the app has started, with all its parts of one version.
const alive = `(() => { const d = document.documentElement.dataset, a = document.getElementById("app");
	return !!a && !a.hasAttribute("aria-busy") && !!a.querySelector("[data-t=nav-today]") && d.edition === d.chunk; })()`

// try evaluates an expression until it is true or the time is over.
func (p *page) try(expression string, most time.Duration) bool {
	for deadline := time.Now().Add(most); time.Now().Before(deadline); time.Sleep(40 * time.Millisecond) {
		ctx, cancel := context.WithTimeout(p.ctx, most)
		ok, _ := value[bool](ctx, p, "Boolean("+expression+")")
		cancel()
		if ok {
			return true
		}
	}
	return false
}

// visit opens an address and waits for the page or for the browser's own error.
func (p *page) visit(address string) {
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	// A page that cannot be had is what some tests look for.
	if p.tab != nil {
		_ = p.tab.Open(ctx, address)
		return
	}
	_ = chromedp.Do(ctx, chromedp.Navigate(address))
}

// update looks for a newer version as a browser does by itself, and returns what became of it:
// "refused" (the worker's script), "none", or the state of the newer worker.
const update = `(async () => {
	const r = await navigator.serviceWorker.getRegistration();
	if (!r) return "no worker";
	try { await r.update(); } catch { return "refused"; }
	const w = r.installing ?? r.waiting;
	if (!w) return "none";
	while (w.state === "installing") await new Promise(ok => setTimeout(ok, 20));
	return w.state;
})()`

// takeOver asks the waiting worker to begin and waits until it has.
const takeOver = `(async () => {
	const r = await navigator.serviceWorker.getRegistration(), w = r.waiting;
	if (w) {
		w.postMessage("take over");
		while (w.state !== "activated" && w.state !== "redundant") await new Promise(ok => setTimeout(ok, 20));
	} else if (r.active) while (r.active.state !== "activated") await new Promise(ok => setTimeout(ok, 20));
	return r.active?.state ?? "none";
})()`

// wrongFiles lists the files that the page gets otherwise than files has them. Called without a
// host, it tells what the worker keeps.
func (p *page) wrongFiles(files []bundle.File) []string {
	p.t.Helper()
	type row [2]string
	var want []row
	for _, f := range files {
		if f.Name == "sw.js" || f.Name == copies.ListName || path.Base(f.Name)[0] == '.' || !site.Offline(f.Name) {
			continue
		}
		sum := sha256.Sum256(f.Data)
		want = append(want, row{f.Name, base64.StdEncoding.EncodeToString(sum[:])})
	}
	list, err := json.Marshal(want)
	if err != nil {
		p.t.Fatal(err)
	}
	script := fmt.Sprintf(`(async () => {
		const scope = (await navigator.serviceWorker.getRegistration())?.scope ?? location.href, bad = [];
		const one = async ([name, sum]) => {
			try {
				const b = await (await fetch(new URL(name, scope))).arrayBuffer();
				const is = btoa(String.fromCharCode(...new Uint8Array(await crypto.subtle.digest("SHA-256", b))));
				if (is !== sum) bad.push(name);
			} catch { bad.push(name); }
		};
		const all = %s;
		while (all.length) await Promise.all(all.splice(0, 16).map(one));
		return bad.join();
	})()`, list)
	if s := eval[string](p, script); s != "" {
		return strings.Split(s, ",")
	}
	return nil
}

// whole reports what is wrong with the app as it is kept: the host is taken away, the start is
// opened, and every file must be that of one of the versions.
func (p *page) whole(s *server, f *harm, versions ...[]bundle.File) (which int, wrong string) {
	p.t.Helper()
	f.off(true)
	defer f.off(false)
	p.visit(s.address)
	if !p.try(alive, patience) {
		return -1, "the app does not start: " + oneLine(p.describe())
	}
	edition := eval[string](p, `document.documentElement.dataset.edition ?? ""`)
	for i, v := range versions {
		if !carries(v, edition) {
			continue
		}
		if bad := p.wrongFiles(v); len(bad) > 0 {
			return i, fmt.Sprintf("%d files are not those of version %s: %.300s", len(bad), edition, strings.Join(bad, " "))
		}
		return i, ""
	}
	return -1, "an unknown version " + edition
}

// carries reports whether a site is the version that its script names.
func carries(files []bundle.File, edition string) bool {
	for _, f := range files {
		if strings.HasPrefix(f.Name, "assets/main.") && strings.Contains(string(f.Data), `dataset.edition="`+edition+`"`) {
			return true
		}
	}
	return false
}

func oneLine(s string) string {
	s = strings.Join(strings.Fields(s), " ")
	return s[:min(len(s), 400)]
}
