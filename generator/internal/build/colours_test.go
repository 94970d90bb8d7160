package build

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"testing"
)

// ownColours are files of site-src that may name colours, each with its reason.
var ownColours = map[string]string{
	"icons/icon.svg":     "a drawing; the PNG files beside it are made of it by hand, and no style sheet reaches those",
	"icons/maskable.svg": "the same drawing",
}

// A colour of CSS Color 4: hexadecimal, by a function that takes figures, or one of the names that
// CSS has had from the start.
var aColour = regexp.MustCompile(`(?i)(?:^|[^&\w])#(?:[0-9a-f]{8}|[0-9a-f]{6}|[0-9a-f]{3,4})\b` +
	`|\b(?:rgba?|hsla?|hwb|lab|lch|oklab|oklch|color)\(\s*[\d.+-]` +
	`|[:,\s](?:aqua|black|blue|fuchsia|gr[ae]y|green|lime|maroon|navy|olive|orange|purple|red|silver|teal|white|yellow)\s*[;,)}!]`)

// TestColoursHaveOneSource: package colour names the colours; nothing in site-src does.
func TestColoursHaveOneSource(t *testing.T) {
	kinds := []string{".css", ".html", ".json", ".svg", ".ts"}
	seen := 0
	for _, dir := range []string{"app", "icons", "pages", "strings", "style"} {
		src := os.DirFS(filepath.Join(here, SourceDir))
		err := fs.WalkDir(src, dir, func(name string, d fs.DirEntry, err error) error {
			if err != nil || !slices.Contains(kinds, filepath.Ext(name)) {
				return err
			}
			data, err := fs.ReadFile(src, name)
			found := aColour.Find(data)
			switch _, own := ownColours[name]; {
			case found == nil && own:
				t.Errorf("%s names no colour: it is no exception", name)
			case found != nil && !own:
				t.Errorf("%s/%s names the colour %q; name it in generator/internal/colour", SourceDir, name, found)
			}
			seen++
			return err
		})
		if err != nil {
			t.Error(err)
		}
	}
	if seen < 100 {
		t.Errorf("only %d files were looked at", seen)
	}
}

func TestAColour(t *testing.T) {
	for s, want := range map[string]bool{
		"color: #FFF;": true, "fill='#fffdf8'": true, "{--x:#00000080}": true, "rgb(0 0 0 / .5)": true, "hsl(120deg": true, "oklch(.4 .1 20)": true,
		"color: white;": true, "dashed,black)": true, "1px solid red;": true, "'#14171c'": true,
		"var(--ink)": false, "white-space: nowrap": false, "&#1234;": false, "#the-letter": false, "#/lines": false, "color-mix(in srgb, var(--ink) 9%, transparent)": false,
		"currentcolor": false, "CanvasText": false, "(rgb: Triple)": false, "class: 'red'": false, "#12345": false,
	} {
		if aColour.MatchString(s) != want {
			t.Errorf("%q: taken for a colour: %v", s, !want)
		}
	}
}
