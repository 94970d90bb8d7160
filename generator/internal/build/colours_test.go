package build

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
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

// In a style sheet a colour may also stand between other words, as in color-mix(in srgb, red 9%,
// tan), be worked out from other values, or have any of the names of CSS Color 4. Comments and
// strings are no part of it.
var (
	cssColour = regexp.MustCompile(`(?i)\b(?:rgba?|hsla?|hwb|lab|lch|oklab|oklch|color|device-cmyk)\(` +
		`|[:,\s(](?:` + strings.Join(colourNames, "|") + `)(?:[\s;,)}!/]|$)`)
	cssAside = regexp.MustCompile(`(?s)/\*.*?\*/|'[^']*'|"[^"]*"`)
)

// colourIn finds a colour in a file of site-src.
func colourIn(name string, data []byte) []byte {
	if filepath.Ext(name) == ".css" {
		data = cssAside.ReplaceAll(data, []byte("''"))
		if found := cssColour.Find(data); found != nil {
			return found
		}
	}
	return aColour.Find(data)
}

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
			found := colourIn(name, data)
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

func TestCSSColour(t *testing.T) {
	for s, want := range map[string]bool{
		"color-mix(in srgb, red 9%, var(--paper))": true, "color-mix(in oklab, var(--ink), rebeccapurple)": true, "linear-gradient(tan, var(--ink))": true,
		"1px solid\nDarkSlateGrey;": true, "rgb(from var(--ink) r g b / 50%)": true, "hsl(calc(1deg * 3) 1% 1%)": true, "oklch(var(--l) 0 0)": true, "color(display-p3 1 0 0)": true,
		"var(--x, gold)": true, "--own: snow": true, "light-dark(white, var(--ink))": true, "color: #abc": true,
		"color-mix(in oklab, var(--pencil, currentcolor) 84%, var(--ink))": false, "/* red, green */ a": false, "content: 'red'": false, "grid-area: var(--red-line)": false,
		"print-color-adjust: exact": false, "rotate: calc(tan(45deg) * 1deg)": false, "background: CanvasText;": false, "transparent 50%": false,
	} {
		if found := colourIn("a.css", []byte(s)); (found != nil) != want {
			t.Errorf("%q: the colour %q is found", s, found)
		}
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

// colourNames are the named colours of CSS Color 4, section 6.1.
var colourNames = strings.Fields(`
	aliceblue antiquewhite aqua aquamarine azure beige bisque black blanchedalmond blue blueviolet
	brown burlywood cadetblue chartreuse chocolate coral cornflowerblue cornsilk crimson cyan darkblue
	darkcyan darkgoldenrod darkgray darkgreen darkgrey darkkhaki darkmagenta darkolivegreen darkorange
	darkorchid darkred darksalmon darkseagreen darkslateblue darkslategray darkslategrey darkturquoise
	darkviolet deeppink deepskyblue dimgray dimgrey dodgerblue firebrick floralwhite forestgreen
	fuchsia gainsboro ghostwhite gold goldenrod gray green greenyellow grey honeydew hotpink indianred
	indigo ivory khaki lavender lavenderblush lawngreen lemonchiffon lightblue lightcoral lightcyan
	lightgoldenrodyellow lightgray lightgreen lightgrey lightpink lightsalmon lightseagreen
	lightskyblue lightslategray lightslategrey lightsteelblue lightyellow lime limegreen linen magenta
	maroon mediumaquamarine mediumblue mediumorchid mediumpurple mediumseagreen mediumslateblue
	mediumspringgreen mediumturquoise mediumvioletred midnightblue mintcream mistyrose moccasin
	navajowhite navy oldlace olive olivedrab orange orangered orchid palegoldenrod palegreen
	paleturquoise palevioletred papayawhip peachpuff peru pink plum powderblue purple rebeccapurple
	red rosybrown royalblue saddlebrown salmon sandybrown seagreen seashell sienna silver skyblue
	slateblue slategray slategrey snow springgreen steelblue tan teal thistle tomato turquoise violet
	wheat white whitesmoke yellow yellowgreen`)
