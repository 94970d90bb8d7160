package e2e

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"sutur/generator/internal/recite"
)

// A face is a reading font that a device may have. The tests bring their own, so that what the
// machine has installed decides nothing.
type face struct {
	pkg  string // below site-src/node_modules
	name string // how a PDF names it
}

// The narrowest and the widest of the fonts tried: a line of a lesson is 0.29 and 0.72 letter sizes
// long per character, against 0.39 in Times and 0.46 in Noto Serif.
var faces = []face{
	{"@fontsource/saira-extra-condensed", "SairaExtraCondensed"},
	{"@fontsource/opendyslexic", "OpenDyslexic"},
}

var bookFont = regexp.MustCompile(`--book: '([^']+)'`)

// wear gives every page opened from now on a font in the place of the first that the style sheets
// ask for, as if the device had it under that name. Bytes handed over by script are no request,
// which the pages' policy would refuse. A face without a package is the device's own.
func (p *page) wear(f face) {
	p.t.Helper()
	if f.pkg == "" {
		return
	}
	css, err := os.ReadFile(filepath.Join(root, "site-src/style/base.css"))
	if err != nil {
		p.t.Fatal(err)
	}
	name := bookFont.FindSubmatch(css)
	if name == nil {
		p.t.Fatal("base.css names no reading font")
	}
	dir := filepath.Dir(tool(p.t, f.pkg+"/unicode.json"))
	var ranges map[string]string
	p.read(filepath.Join(dir, "unicode.json"), &ranges)
	type cut struct {
		Bytes         []byte
		Weight, Style string
		Range         string
	}
	var cuts []cut
	if len(ranges) == 0 {
		ranges = map[string]string{"latin": "U+0-10FFFF"} // one file for all it has
	}
	for _, subset := range []string{"latin", "latin-ext"} {
		for _, style := range []string{"normal", "italic"} {
			for _, weight := range []string{"400", "700"} {
				data, err := os.ReadFile(filepath.Join(dir, "files", fmt.Sprintf("%s-%s-%s-%s.woff2", filepath.Base(dir), subset, weight, style)))
				if err == nil {
					cuts = append(cuts, cut{data, weight, style, ranges[subset]})
				}
			}
		}
	}
	if len(cuts) < 2 {
		p.t.Fatalf("%s has only %d files", f.pkg, len(cuts))
	}
	list, err := json.Marshal(cuts)
	if err != nil {
		p.t.Fatal(err)
	}
	p.before(fmt.Sprintf(
		`for (const x of %s) document.fonts.add(new FontFace(%q, Uint8Array.from(atob(x.Bytes), c => c.charCodeAt(0)),
			{ weight: x.Weight, style: x.Style, unicodeRange: x.Range }));`, list, name[1]))
}

// worn fails the test if a document does not use the font.
func (f face) worn(t testing.TB, doc *pdf) {
	t.Helper()
	for name := range doc.Fonts {
		if strings.Contains(name, f.name) {
			return
		}
	}
	t.Errorf("%s is not in the document: %v", f.name, doc.Fonts)
}

func (p *page) read(name string, to any) {
	p.t.Helper()
	data, err := os.ReadFile(name)
	if err == nil {
		err = json.Unmarshal(data, to)
	}
	if err != nil {
		p.t.Fatalf("%s: %v", name, err)
	}
}

// TestPrintFaces lays out every kind of sheet with a narrow and a wide reading font: all has its
// place on either paper, and the sheets keep what TestPrintSheets asks of them.
func TestPrintFaces(t *testing.T) {
	s := serve(t, "/", built(t))
	text := printText(t)
	for _, f := range faces {
		p := newPage(t)
		p.wear(f)
		p.learner(s.address, everyRule()...)
		for _, x := range []struct {
			kind, hash string
			pages      int // at most
		}{
			{"record", "sheet=record", 1},
			{"card", "sheet=card&name=yes", 2},
			{"both", "sheet=both&from=78:1&to=78:16&rule=noon-ikhfa&show=all&size=32&name=yes", 9},
			{"several", "sheet=both&from=78:1&to=78:12&rule=noon-ikhfa&also=ghunnah,all-long,all-noon,stops&show=focus&size=32&name=yes", 6},
		} {
			for _, paper := range []string{"a4", "letter"} {
				for _, turn := range []string{"portrait", "landscape"} {
					t.Run(strings.Join([]string{f.name, x.kind, paper, turn}, " "), func(t *testing.T) {
						p.t = t
						p.lay(s, fmt.Sprintf("#/print?%s&paper=%s&turn=%s", x.hash, paper, turn))
						for _, u := range p.unfit() {
							t.Error(u)
						}
						doc := p.paper()
						f.worn(t, doc)
						if n := len(doc.Pages); n > x.pages {
							t.Errorf("%d pages, want %d at most", n, x.pages)
						}
						if x.kind != "both" {
							return
						}
						wide, high := sizes[paper][0], sizes[paper][1]
						if turn == "landscape" {
							wide, high = high, wide
						}
						checkSheets(t, text, "78:1-78:16", p.leaves(), doc, wide, high, 32)
					})
				}
			}
		}
		p.t = t
		p.calm()
	}
}

func everyRule() (list []string) {
	for r := recite.RuleID(0); r < recite.NumRules; r++ {
		list = append(list, r.String())
	}
	return list
}
