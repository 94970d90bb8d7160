package e2e

import (
	"fmt"
	"testing"
	"time"

	"sutur/generator/internal/engine"
)

// TestPartAgain loses a part of the script that is fetched when it is needed: it does not come, or
// comes and does not run. Whatever the engine asks for again by itself, the button beside the words
// gets it once the host is right, and changes nothing while it is not. The sample takes each part
// one way, and leaves Chromium out.
func TestPartAgain(t *testing.T) {
	files := built(t)
	parts := []struct{ part, at, words, again, there string }{
		{"card", "#/today", "no-plan", "plan-again", `document.querySelector('[data-t^="next-"]')`},
		{"learner", "#/learner", "part-again", "part-again", `document.querySelector("[data-t^=pencil-]")`},
		{"offline", "#/learner", "offline-again", "offline-again", `document.querySelector("[data-t=offline]")?.innerText.includes("Kept on this device")`},
		{"print", "#/print", "part-again", "part-again", `document.querySelector("main.print")`},
	}
	notChromium(t, func(t *testing.T, b engine.Browser) {
		for i, x := range parts {
			for j, how := range []fault{missing, cutOff} {
				if !allFaults() && i%2 != j {
					continue
				}
				t.Run(x.part+" "+string(how), func(t *testing.T) {
					s, f := harmed(t, "/", files)
					p := newTab(t, b)
					defer p.close()
					f.set(nameOf(t, files, "assets/"+x.part+"."), how)
					p.open(s.address)
					p.wait("the field for a name", visible(hook("name")))
					p.click("begin")
					p.wait("that the name is kept", `!document.querySelector("[data-t=first]")`)
					eval[any](p, fmt.Sprintf(`(location.hash = %q, 0)`, x.at))
					p.wait("words about it", visible(hook(x.words)))
					asked := make(chan bool, 100)
					f.watch(func(name string) {
						if name == "" {
							asked <- true
						}
					})
					f.also("index.html", missing)
					p.click(x.again)
					select {
					case <-asked:
					case <-time.After(patience):
						t.Fatal("the host is not asked: " + p.describe())
					}
					p.wait("the same words", visible(hook(x.words)))
					f.set("", "")
					p.click(x.again)
					p.wait("the part", x.there)
				})
			}
		}
	})
}
