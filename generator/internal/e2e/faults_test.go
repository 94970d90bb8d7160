package e2e

import (
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"sort"
	"strconv"
	"strings"
	"testing"
	"time"

	"sutur/generator/internal/bundle"
)

// The variable FAULTS=all runs every file with every fault and prints counts, FAULTS=100 so many of
// them; without it a small sample is run. SITES names folders, separated by colons, with three
// versions built elsewhere, to be tried in place of the project's own.
func allFaults() bool { return os.Getenv("FAULTS") == "all" }

// sampleOf returns the first two cases, or all of them.
func sampleOf[T any](cases ...T) []T {
	if allFaults() {
		return cases
	}
	return cases[:2]
}

// versions returns three versions that differ in files of every kind.
func versions(t testing.TB) [3][]bundle.File {
	t.Helper()
	var v [3][]bundle.File
	if s := os.Getenv("SITES"); s != "" {
		for i, dir := range filepath.SplitList(s) {
			v[i] = readSite(t, dir)
		}
		return v
	}
	for i := range v {
		v[i] = edition(t, everyKind(i+1))
	}
	return v
}

func readSite(t testing.TB, dir string) (files []bundle.File) {
	t.Helper()
	err := fs.WalkDir(os.DirFS(dir), ".", func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := os.ReadFile(filepath.Join(dir, filepath.FromSlash(p)))
		files = append(files, bundle.File{Name: p, Data: data})
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// changed lists the files of b that a does not have just so.
func changed(a, b []bundle.File) (names []string) {
	was := map[string]string{}
	for _, f := range a {
		was[f.Name] = string(f.Data)
	}
	for _, f := range b {
		if d, ok := was[f.Name]; (!ok || d != string(f.Data)) && filepath.Base(f.Name)[0] != '.' {
			names = append(names, f.Name)
		}
	}
	return names
}

type run struct {
	file string
	how  fault
}

// runs returns every file with every fault, or a sample that is the same every time.
func runs(names []string, sample int) []run {
	var all []run
	for _, f := range faults {
		for _, n := range names {
			all = append(all, run{n, f})
		}
	}
	if allFaults() {
		return all
	}
	// What a page cannot do without comes first; the rest is drawn by lot.
	var out []run
	for _, r := range all {
		if r.how == signIn && (r.file == "index.html" || strings.HasPrefix(r.file, "assets/main.")) {
			out = append(out, r)
		}
	}
	if n, err := strconv.Atoi(os.Getenv("FAULTS")); err == nil {
		sample = min(n, len(all))
	}
	rng := rand.New(rand.NewPCG(11, 1))
	for _, i := range rng.Perm(len(all))[:sample] {
		out = append(out, all[i])
	}
	return out
}

// tally counts what came of runs, by fault.
type tally struct{ runs, met, harmed, dead map[fault]int }

func newTally() tally {
	return tally{map[fault]int{}, map[fault]int{}, map[fault]int{}, map[fault]int{}}
}

func (c tally) log(t *testing.T, what string) {
	var b strings.Builder
	for _, f := range faults {
		fmt.Fprintf(&b, "\n%-8s %4d runs, %4d met, %3d broken while it lasts, %3d broken afterwards", f, c.runs[f], c.met[f], c.harmed[f], c.dead[f])
	}
	t.Logf("%s:%s", what, b.String())
}

// TestUpdateFaults harms each file of a newer version while it is fetched. The version before must
// stay whole, and the newer one come whole once the host is right again.
func TestUpdateFaults(t *testing.T) {
	v := versions(t)
	names := changed(v[0], v[1])
	count := newTally()
	var p *page
	var s *server
	var f *harm
	start := func() {
		if s != nil {
			p.close()
			s.stop()
		}
		s, f = harmed(t, "/", v[0])
		p = newPage(t)
		p.open(s.address)
		p.wait("everything to be kept", kept)
		s.host.Set(v[1])
	}
	start()
	for _, r := range runs(names, 10) {
		f.set(r.file, r.how)
		// What an earlier run kept of this file does not count.
		eval[any](p, fmt.Sprintf(`(async () => {
			for (const k of (await caches.keys()).filter(k => k.endsWith(%q))) await (await caches.open(k)).delete(new URL(%q, location.href).href);
			return 0;
		})()`, versionOf(v[1]), r.file))
		state := eval[string](p, update)
		count.runs[r.how]++
		count.met[r.how] += min(1, f.count())
		if state == "installed" || state == "activating" || state == "activated" {
			eval[string](p, takeOver)
		}
		which, wrong := p.whole(s, f, v[0], v[1])
		if wrong != "" {
			count.harmed[r.how]++
			t.Errorf("%s %s (update: %s): %s", r.how, r.file, state, wrong)
		}
		if which == 0 && wrong == "" {
			continue // the next run goes on from the whole older version
		}
		f.set("", "")
		if wrong != "" {
			if bad := heals(p, s, f, v[1]); bad != "" {
				count.dead[r.how]++
				t.Errorf("%s %s, host right again: %s", r.how, r.file, bad)
			}
		}
		start()
	}
	f.set("", "")
	if bad := heals(p, s, f, v[1]); bad != "" {
		t.Errorf("after all faults: %s", bad)
	}
	count.log(t, "update")
}

// heals opens the site from a host that is right again, twice as a family would, accepts a newer
// version, and says what is still wrong.
func heals(p *page, s *server, f *harm, want []bundle.File) string {
	for range 2 {
		p.visit(s.address)
		p.try(alive, 3*time.Second)
		if st := eval[string](p, update); st == "installed" {
			eval[string](p, takeOver)
		}
	}
	p.visit(s.address)
	p.try(kept, patience)
	_, wrong := p.whole(s, f, want)
	return wrong
}

// versionOf finds the version in the worker's script.
func versionOf(files []bundle.File) string {
	for _, f := range files {
		if f.Name == "sw.js" {
			if _, after, ok := strings.Cut(string(f.Data), `version:"`); ok {
				return after[:16]
			}
		}
	}
	return "none"
}

// TestFirstVisitFaults harms each file on the very first visit. Nothing may be called kept that is
// not, and the next visit makes it whole.
func TestFirstVisitFaults(t *testing.T) {
	v := versions(t)
	var names []string
	for _, f := range v[0] {
		if filepath.Base(f.Name)[0] != '.' {
			names = append(names, f.Name)
		}
	}
	sort.Strings(names)
	count := newTally()
	s, f := harmed(t, "/", v[0])
	var p, beside *page
	start := func() {
		if p != nil {
			beside.close()
			p.close()
		}
		p = newPage(t)
		beside = p.another() // a text file, which starts nothing
		beside.open(s.address + "licences/MIT.txt")
	}
	start()
	for _, r := range runs(names, 8) {
		f.set(r.file, r.how)
		// What an earlier run kept of this file does not count.
		eval[any](beside, fmt.Sprintf(`(async () => {
			for (const k of await caches.keys()) await (await caches.open(k)).delete(new URL(%q, location.origin).href);
			return 0;
		})()`, r.file))
		p.visit(s.address)
		state := beside.tried(f)
		count.runs[r.how]++
		count.met[r.how] += min(1, f.count())
		if state != "activated" {
			continue // the next run goes on from what is kept so far
		}
		if _, wrong := p.whole(s, f, v[0]); wrong != "" {
			count.harmed[r.how]++
			t.Errorf("%s %s: it is called kept, but %s", r.how, r.file, wrong)
			f.set("", "")
			if bad := heals(p, s, f, v[0]); bad != "" {
				count.dead[r.how]++
				t.Errorf("%s %s, host right again: %s", r.how, r.file, bad)
			}
		}
		f.set("", "")
		start()
	}
	f.set("", "")
	if bad := heals(p, s, f, v[0]); bad != "" {
		t.Errorf("after all faults: %s", bad)
	}
	count.log(t, "first visit")
}

// tried waits until the first visit in another tab has kept everything, or has met its fault and
// given up; it returns the state of the worker in use.
func (p *page) tried(f *harm) string {
	idle := 0
	for deadline := time.Now().Add(20 * time.Second); time.Now().Before(deadline) && idle < 6; time.Sleep(50 * time.Millisecond) {
		state := eval[string](p, `navigator.serviceWorker.getRegistration().then(r => r?.active?.state ?? (r ? "busy" : "none"))`)
		switch {
		case state == "activated":
			return state
		case state == "none" && f.count() > 0:
			idle++
		default:
			idle = 0
		}
	}
	return "none"
}
