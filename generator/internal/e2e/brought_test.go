package e2e

import (
	"fmt"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"
)

// poster is a page that posts a form as a system does that shares something (Web Share Target), and
// counts what of it reaches the host.
const poster = `<!doctype html><meta charset="utf-8"><title>poster</title><link rel="icon" href="data:,">
	<form method="post" enctype="multipart/form-data" action="a/b/brought">
	<textarea name="title"></textarea><textarea name="text"></textarea><textarea name="url"></textarea>
	<input type="file" name="files" multiple data-t="files"><button data-t="share">Share</button></form>`

func withPoster(posted *atomic.Int64) func(http.Handler) http.Handler {
	return answering(func(w http.ResponseWriter, r *http.Request, next http.Handler) {
		if r.Method == http.MethodPost {
			posted.Add(1)
		}
		if r.URL.Path != "/poster" {
			next.ServeHTTP(w, r)
			return
		}
		w.Header().Set("Content-Type", "text/html")
		io.WriteString(w, poster)
	})
}

// share shares words and files, as another app does.
func (p *page) share(s *server, words map[string]string, files ...string) {
	p.t.Helper()
	p.open(strings.TrimSuffix(s.address, "a/b/") + "poster")
	for name, text := range words {
		eval[any](p, fmt.Sprintf(`(document.querySelector("[name=%s]").value = %q, 0)`, name, text))
	}
	if len(files) > 0 {
		p.give("files", files...)
	}
	p.click("share")
	p.wait("the app", drawn)
}

// left is how much of what was shared the worker still holds.
const left = `caches.keys().then(async names => {
	let n = 0;
	for (const name of names) for (const r of await (await caches.open(name)).keys()) n += r.url.endsWith("/brought");
	return n;
})`

// TestBrought: a backup that another app shares is read after a look, a link to work opens, anything
// else is refused in words. Nothing of it reaches the host, stays behind or is in an address, and it
// works without a network.
func TestBrought(t *testing.T) {
	var posted atomic.Int64
	s := serve(t, "/a/b/", built(t), withPoster(&posted))
	backup, err := filepath.Abs(filepath.Join(root, "site-src", "test", "data", "backup-1.json"))
	if err != nil {
		t.Fatal(err)
	}
	p := newPage(t)
	p.withAxe()
	p.open(s.address)
	p.wait("everything to be kept", kept)

	gone := func() {
		t.Helper()
		if n := eval[int](p, left); n != 0 {
			t.Errorf("%d things that were shared are left", n)
		}
		if n := posted.Load(); n != 0 {
			t.Errorf("the host was sent %d of them", n)
		}
	}
	// Nobody reads yet.
	p.share(s, nil, backup)
	p.wait("what the backup would do", visible(hook("reading")))
	if at := eval[string](p, `location.href`); at != s.address+"#/today" {
		t.Errorf("it is read at %s", at)
	}
	gone()
	p.click("reading-take")
	p.wait("the learner of the backup", `document.querySelector('[data-t^="next-"]')`)
	p.entries("of the backup", 2)

	link := vectors(t)[0]
	p.share(s, map[string]string{"title": "For Maryam", "text": "For today:\n" + s.address + link + "\nThank you"})
	p.wait("the work", visible(hook("given")))
	if at := eval[string](p, `location.href`); at != s.address+link {
		t.Errorf("it is opened at %s", at)
	}
	gone()

	other := filepath.Join(t.TempDir(), "other.json")
	putFile(t, other, `{"format":"other"}`)
	p.share(s, nil, other)
	p.wait("that it is no backup", visible(hook("notice-refused")))
	if text := p.text(hook("notice-refused")); !strings.Contains(text, "other.json") || !strings.Contains(text, "not a backup") {
		t.Errorf("it says %q", text)
	}
	gone()

	for what, says := range map[string]string{"https://example.org/": "no link to work", s.address + "#/learner": "no link to work", "": "Nothing has arrived"} {
		p.share(s, map[string]string{"text": what})
		p.wait("why not", visible(hook("brought")))
		if text := p.text(hook("brought")); !strings.Contains(text, says) {
			t.Errorf("of %q it says %q", what, text)
		}
		gone()
	}
	p.axe("brought")
	p.photo("brought")
	p.share(s, nil, withMany(t, backup)...)
	p.wait("one at a time", visible(hook("brought")))

	large := filepath.Join(t.TempDir(), "large.json")
	putFile(t, large, "")
	if err := os.Truncate(large, 40<<20); err != nil {
		t.Fatal(err)
	}
	p.share(s, nil, large)
	p.wait("why not", visible(hook("brought")))
	if text := p.text(hook("brought")); !strings.Contains(text, "too large") {
		t.Errorf("of 40 MiB it says %q", text)
	}
	gone()

	p.open(strings.TrimSuffix(s.address, "a/b/") + "poster")
	s.stop()
	eval[any](p, fmt.Sprintf(`(document.querySelector("[name=url]").value = %q, 0)`, s.address+link))
	p.click("share")
	p.wait("the work without a network", visible(hook("given")))
	p.calm()
}

// withMany is two files.
func withMany(t *testing.T, file string) []string {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	second := filepath.Join(t.TempDir(), "second.json")
	putFile(t, second, string(data))
	return []string{file, second}
}
