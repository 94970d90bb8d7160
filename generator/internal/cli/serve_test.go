package cli

import (
	"bufio"
	"bytes"
	"context"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"time"

	"sutur/generator/internal/build"
)

const project = "../../.."

// patience is how long a test waits for a build; with the race detector on a busy machine one takes
// a minute.
const patience = 5 * time.Minute

// copyProject copies what a build reads into a new folder.
func copyProject(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	for _, d := range []string{"rules-content", "LICENSES", "site-src/app", "site-src/fonts", "site-src/icons", "site-src/pages", "site-src/strings", "site-src/style", "site-src/vendor"} {
		if err := os.CopyFS(filepath.Join(dir, d), os.DirFS(filepath.Join(project, d))); err != nil {
			t.Fatal(err)
		}
	}
	for _, f := range []string{"go.mod", build.LogFile, "site-src/tsconfig.json"} {
		data, err := os.ReadFile(filepath.Join(project, f))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, f), data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

// edit replaces text in a file of dir.
func edit(t *testing.T, dir, name, old, with string) {
	t.Helper()
	p := filepath.Join(dir, name)
	data, err := os.ReadFile(p)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Contains(data, []byte(old)) {
		t.Fatalf("%s does not hold %q", name, old)
	}
	if err := os.WriteFile(p, bytes.Replace(data, []byte(old), []byte(with), 1), 0o644); err != nil {
		t.Fatal(err)
	}
}

// TestBuildMistake: a mistake in the content is told with its place, and the site that was there
// stays as it was, byte for byte.
func TestBuildMistake(t *testing.T) {
	dir := copyProject(t)
	build := func() (int, string) {
		var out, errs bytes.Buffer
		code := run(context.Background(), dir, []string{"build"}, &out, &errs)
		return code, errs.String()
	}
	if code, errs := build(); code != 0 {
		t.Fatalf("exit %d: %s", code, errs)
	}
	before, err := os.ReadFile(filepath.Join(dir, "dist", "sw.js"))
	if err != nil {
		t.Fatal(err)
	}
	edit(t, dir, "site-src/pages/about.html", "<h1>About Sutur</h1>", "<h1>Changed</h1>\n{{.Nothing}}")
	edit(t, dir, "site-src/app/main.ts", "early();", "early(;")
	code, errs := build()
	if code != 1 || !strings.Contains(errs, "site-src/app/main.ts:") || !strings.Contains(errs, "nothing was written") {
		t.Errorf("exit %d: %s", code, errs)
	}
	edit(t, dir, "site-src/app/main.ts", "early(;", "early();")
	if code, errs = build(); code != 1 || !regexp.MustCompile(`(?m)^site-src/pages/about\.html:\d+:\d+: `).MatchString(errs) {
		t.Errorf("exit %d: %s", code, errs)
	}
	after, err := os.ReadFile(filepath.Join(dir, "dist", "sw.js"))
	if err != nil || !bytes.Equal(before, after) {
		t.Errorf("the site was touched (%v)", err)
	}
}

// lockedBuffer may be read while a command writes to it.
type lockedBuffer struct {
	mu sync.Mutex
	b  bytes.Buffer
}

func (l *lockedBuffer) Write(p []byte) (int, error) {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.b.Write(p)
}

func (l *lockedBuffer) String() string {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.b.String()
}

func TestServe(t *testing.T) {
	dir := copyProject(t)
	ctx, interrupt := context.WithCancel(context.Background())
	defer interrupt()
	r, w := io.Pipe()
	var errs lockedBuffer
	done := make(chan int, 1)
	go func() { done <- run(ctx, dir, []string{"serve", "--port", "0"}, w, &errs); w.Close(); close(done) }()
	// Its folder goes when the test ends: it must have stopped by then, also after a failure.
	t.Cleanup(func() {
		interrupt()
		for range done {
		}
	})

	var url string
	lines := bufio.NewScanner(r)
	for url == "" && lines.Scan() {
		if m := regexp.MustCompile(`^(http://127\.0\.0\.1:\d+/) `).FindStringSubmatch(lines.Text()); m != nil {
			url = m[1]
		}
	}
	if url == "" {
		t.Fatalf("no address was printed: %s", errs.String())
	}
	go func() {
		for lines.Scan() {
		}
	}()
	about := func() string {
		resp, err := http.Get(url + "about.html")
		if err != nil {
			t.Fatal(err)
		}
		defer resp.Body.Close()
		b, _ := io.ReadAll(resp.Body)
		return string(b)
	}
	wait := func(what string, ok func() bool) {
		t.Helper()
		for deadline := time.Now().Add(patience); !ok(); time.Sleep(50 * time.Millisecond) {
			if time.Now().After(deadline) {
				t.Fatalf("waited in vain for %s; errors: %s", what, errs.String())
			}
		}
	}
	if !strings.Contains(about(), "<h1>About Sutur</h1>") {
		t.Fatal("the page is not served")
	}
	foreign, err := http.NewRequest("GET", url, nil)
	if err != nil {
		t.Fatal(err)
	}
	foreign.Host = "example.org"
	if resp, err := http.DefaultClient.Do(foreign); err != nil || resp.StatusCode != http.StatusMisdirectedRequest {
		t.Errorf("by the name of another host: %v, %v", resp, err)
	}
	edit(t, dir, "site-src/pages/about.html", "<h1>About Sutur</h1>", "<h1>Changed here</h1>")
	wait("the changed page", func() bool { return strings.Contains(about(), "<h1>Changed here</h1>") })
	edit(t, dir, "site-src/pages/about.html", "<h1>Changed here</h1>", "<h1>Broken</h1>{{.Nothing}}")
	wait("the mistake", func() bool { return strings.Contains(errs.String(), "site-src/pages/about.html:") })
	if !strings.Contains(about(), "<h1>Changed here</h1>") {
		t.Error("after a mistake the last good page is not served")
	}
	interrupt()
	select {
	case code := <-done:
		if code != 0 {
			t.Errorf("exit %d: %s", code, errs.String())
		}
	case <-time.After(patience):
		t.Fatal("it does not stop when interrupted")
	}
}

func TestVerify(t *testing.T) {
	code, out, errs := runHere("verify")
	if code != 0 || errs != "" || !strings.Contains(out, "unexplained") || !strings.Contains(out, "6236") {
		t.Errorf("exit %d, report %q, errors %q", code, out, errs)
	}
}
