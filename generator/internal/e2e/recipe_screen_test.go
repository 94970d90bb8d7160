package e2e

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"sutur/generator/internal/build"
)

// madeUpScreen is a screen that does not exist, added by the recipe "A screen" of
// site-src/README.md, step by step. It counts presses, and says for whom.
var madeUpScreen = []change{
	// 1. Its address.
	{"site-src/app/types.ts", "  'brought',\n] as const", "  'brought',\n  'counter',\n] as const"},
	// 2. What it remembers.
	{"site-src/app/shape.ts", "  notice: Notice | undefined;\n", "  /** How often the counter was pressed. */\n  presses: number;\n  notice: Notice | undefined;\n"},
	{"site-src/app/shape.ts", "  notice: undefined,\n", "  presses: 0,\n  notice: undefined,\n"},
	// 3. Its words.
	{"site-src/strings/en.json", `"nav.label":`, `"nav.counter": "Counter",
  "counter.pressed": { "zero": "{child} has not pressed yet.", "one": "{child} pressed once.", "other": "{child} pressed {n} times." },
  "counter.press": "Press",
  "nav.label":`},
	// 4. The screen itself, a function of the state.
	{"site-src/app/screens/counter/counter.ts", "", `// Counts presses.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import * as state from '../../state.ts';
import { called } from '../parts/words.ts';
import type { Screen } from '../screen.ts';

const press = () => state.set({ presses: state.get().presses + 1 });

export const counter: Screen = {
  title: () => t('nav.counter'),
  view: (s) => html` + "`" + `
    <main class="plain">
      <h1 tabindex="-1">${t('nav.counter')}</h1>
      <p data-t="pressed">${t('counter.pressed', { n: s.presses, child: called(state.learner(s)) })}</p>
      <button class="main" data-t="press" @click=${press}>${t('counter.press')}</button>
    </main>
  ` + "`" + `,
};
`},
	// 5. Where it is fetched from.
	{"site-src/app/screens/screens.ts", "  rules: () =>", "  counter: () => import('./counter/counter.ts').then((m) => m.counter),\n  rules: () =>"},
}

// TestAddScreen follows the recipe in a copy of the project: the types agree, the screen is there
// at its address, a press on it is drawn, and the button that was pressed is the same element.
func TestAddScreen(t *testing.T) {
	dir := changedProject(t, madeUpScreen)
	abs, err := filepath.Abs(filepath.Join(root, build.SourceDir))
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"tsconfig.json", "package.json"} {
		data, err := os.ReadFile(filepath.Join(abs, name))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, build.SourceDir, name), data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Symlink(filepath.Join(abs, "node_modules"), filepath.Join(dir, build.SourceDir, "node_modules")); err != nil {
		t.Fatal(err)
	}
	check := exec.Command(filepath.Join("node_modules", ".bin", "tsc"), "-p", "tsconfig.json", "--noEmit")
	check.Dir = filepath.Join(dir, build.SourceDir)
	if out, err := check.CombinedOutput(); err != nil {
		t.Fatalf("the types do not agree: %v\n%s", err, out)
	}

	s := serve(t, "/", edition(t, madeUpScreen))
	p := newPage(t)
	p.begin(s.address, "Mina")
	eval[any](p, `(location.hash = "#/counter", 0)`)
	p.wait("the screen", `document.querySelector("[data-t=pressed]")?.textContent.includes("has not pressed yet")`)
	eval[any](p, `(globalThis.button = document.querySelector("[data-t=press]"), 0)`)
	p.click("press")
	p.click("press")
	p.wait("two presses", `document.querySelector("[data-t=pressed]").textContent.includes("pressed 2 times")`)
	if !eval[bool](p, `button.isConnected`) {
		t.Error("the button was drawn anew")
	}
	if got := eval[string](p, `document.title`); got != "Counter · Sutur" {
		t.Errorf("the page is called %q", got)
	}
	p.calm()
}
