package e2e

import (
	"math/rand/v2"
	"testing"
	"time"

	"sutur/generator/internal/engine"
)

// notChromium runs a test in the engines that the other tests of faults leave out.
func notChromium(t *testing.T, f func(t *testing.T, b engine.Browser)) {
	inEngines(t, func(t *testing.T, b engine.Browser) {
		if b.Name() == "chromium" && !allFaults() {
			t.Skip("left to the tests in Chromium alone, but with FAULTS=all")
		}
		f(t, b)
	})
}

// TestEngineUpdateFaults takes one version after another, and harms a file of the newer one while
// it is fetched. The version before stays whole; once the host is right again, the newer one comes
// whole. FAULTS=all goes round five times, in Chromium too.
func TestEngineUpdateFaults(t *testing.T) {
	v := versions(t)
	hows, rounds := []fault{cutOff, signIn, oneByte, missing}, 1
	if allFaults() {
		hows, rounds = append(hows, late, down), 5
	}
	notChromium(t, func(t *testing.T, b engine.Browser) {
		s, f := harmed(t, "/", v[0])
		p := newTab(t, b)
		p.open(s.address)
		p.wait("everything to be kept", kept)
		rng := rand.New(rand.NewPCG(11, 3))
		for i := range rounds * len(hows) {
			how, old, new := hows[i%len(hows)], v[i%3], v[(i+1)%3]
			names := changed(old, new)
			file := names[rng.IntN(len(names))]
			s.host.Set(new)
			f.set(file, how)
			state := eval[string](p, update)
			if f.count() == 0 {
				t.Errorf("%s %s: nobody has asked for it", how, file)
			}
			if which, wrong := p.whole(s, f, old); wrong != "" {
				t.Fatalf("%s %s (update: %s): version %d: %s", how, file, state, which+1, wrong)
			}
			f.set("", "")
			state = p.next()
			if which, wrong := p.whole(s, f, new); wrong != "" {
				t.Fatalf("%s %s, host right again (update: %s): version %d: %s", how, file, state, which+1, wrong)
			}
		}
	})
}

// TestEngineInterrupted breaks a first visit off twice, by the host and by going away; the third
// keeps everything.
func TestEngineInterrupted(t *testing.T) {
	files := edition(t, everyKind(1))
	notChromium(t, func(t *testing.T, b engine.Browser) {
		s, f := harmed(t, "/", files)
		p := newTab(t, b)
		f.set("lessons/ra.html", down)
		p.open(s.address)
		p.wait("words about it", `document.querySelector('[data-t=offline]')?.innerText.includes("Not everything is kept yet")`)
		half := make(chan bool, len(files))
		f.watch(func(name string) {
			if name == "licences/MIT.txt" {
				half <- true
			}
		})
		f.set("licences/MIT.txt", late)
		p.open(s.address)
		select {
		case <-half:
		case <-time.After(patience):
			t.Fatal("the second visit does not go on: " + p.describe())
		}
		p.open("about:blank")
		f.set("", "")
		p.open(s.address)
		p.wait("everything to be kept", kept)
		if _, wrong := p.whole(s, f, files); wrong != "" {
			t.Error(wrong)
		}
	})
}
