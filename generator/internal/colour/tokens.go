package colour

import (
	"cmp"
	"fmt"
	"strings"
)

// The pages and their ink, #rrggbb. Contrast is measured against the page; the families' colours
// also keep their distance from the ink.
const (
	PaperLight, InkLight = "#fffdf8", "#1d1b18"
	PaperDark, InkDark   = "#14171c", "#ece8df"
)

// A token is a colour of the interface: the custom property --name in the light and the dark theme
// and on paper. Where dark or print is empty it stays light.
type token struct{ name, light, dark, print string }

// tokens are all colours there are beside those of the families.
var tokens = []token{
	{"paper", PaperLight, PaperDark, "#ffffff"},
	{"ink", InkLight, InkDark, "#000000"},
	{"soft", "#655e52", "#aca596", "#444444"}, // words that matter less
	{"card", "#fbf6ea", "#1c2027", "#ffffff"},
	{"line", "#ddd3bf", "#353b45", "#999999"}, // between things
	{"hair", "#ddd3bf", "#353b45", "#cccccc"}, // under lines of the text, behind bars
	{"edge", "#8d8371", "#7d8390", "#555555"}, // of what is pressed or written into
	{"accent", "#1d6157", "#8cc9bb", ""},
	{"on-accent", PaperLight, "#10201d", ""},
	{"found", "#17663f", "#7fd0a0", ""},
	{"missed", "#a3271f", "#ff9c8f", ""},
	{"extra", "#6b4a9c", "#c7aef0", ""},
	{"drawn", "#e31bf6", "#8eff61", ""}, // over the text of the shared screen
	{"shadow", "#0000002e", "", ""},     // of what lies over the page
	{"hollow", "#80808003", "", ""},     // of letters that are drawn again: site-src/PAINTING.md
}

// veil lies over the page behind a dialog. It is no token, because not every engine gives
// ::backdrop the properties of the page.
const veil = "#14120e80"

// properties writes --NAME for each token, --c-NAME for each family and --l-N for each colour of
// learners: on :root, for the light theme and, on screens alone, for the dark one (asked for by the
// system or by data-theme=dark), with stronger lines where the reader asks for more contrast; in
// print; and on the pages of paper that a screen shows, which are white in every theme, as is the
// picture of a link, which cameras expect to be dark on light. All these rules weigh the same: the
// last that applies wins.
func properties(families []Family) string {
	var light, dark, print, leaf strings.Builder
	for _, t := range tokens {
		fmt.Fprintf(&light, "--%s:%s;", t.name, t.light)
		if t.dark != "" {
			fmt.Fprintf(&dark, "--%s:%s;", t.name, t.dark)
			fmt.Fprintf(&leaf, "--%s:%s;", t.name, cmp.Or(t.print, t.light))
		}
		if t.print != "" {
			fmt.Fprintf(&print, "--%s:%s;", t.name, t.print)
		}
	}
	for _, f := range families {
		fmt.Fprintf(&light, "--c-%s:%s;", f.Name, f.Light)
		fmt.Fprintf(&dark, "--c-%s:%s;", f.Name, f.Dark)
		fmt.Fprintf(&leaf, "--c-%s:%s;", f.Name, f.Light)
	}
	for i, h := range learnerColours() {
		fmt.Fprintf(&light, "--l-%d:%s;", i, h.hex[0])
		fmt.Fprintf(&dark, "--l-%d:%s;", i, h.hex[1])
		fmt.Fprintf(&leaf, "--l-%d:%s;", i, h.hex[0])
	}
	return ":root{" + light.String() + "}\n" +
		"@media screen and (prefers-color-scheme:dark){:root:where(:not([data-theme=light])){" + dark.String() + "}}\n" +
		"@media screen{:root:where([data-theme=dark]){" + dark.String() + "}}\n" +
		"@media (prefers-contrast:more){:root{--soft:var(--ink);--line:var(--ink);--edge:var(--ink)}}\n" +
		"@media print{:root{" + print.String() + "}}\n" +
		".leaf,.qr{" + leaf.String() + "}\n" +
		"dialog::backdrop{background:" + veil + "}\n"
}
