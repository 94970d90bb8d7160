package colour

import (
	"fmt"
	"strings"
)

// Underlines of whole words clear the bowls of noon and ya and most vowels below them and are never
// broken around ink: a line broken there vanishes under final letters. The offset is from the
// baseline. Each form has the thickness at which it can still be told from the others under one
// alif (a fifth of an em wide).
const offset = ".42em"

var thickness = map[string]string{"solid": ".05em", "double": ".05em", "dotted": ".06em", "dashed": ".03em", "wavy": ".05em"}

// CSS writes the style sheet of all colours:
//
//   - --NAME for each colour of the interface, --c-NAME for each family and --l-N
//     for each colour of learners, in each theme and on paper (tokens.go);
//   - --form-NAME, the family's form, for the script of pages that do without
//     the catalogue;
//   - .w::highlight(f-NAME), the colour for ranges of letters in words, below an
//     element whose data-ink holds f-NAME, and on leaves of paper: every such
//     rule that reaches an element makes its style dear. The form is drawn by
//     the page (site-src/app/marking/signs.ts): what engines draw in highlights
//     differs, and cannot be told apart under a narrow letter;
//   - mark.f-NAME, underline alone, for whole words of pages read without script.
//     Longhands, because WebKit knows no shorthand with a style and thickness.
func CSS(families []Family) string {
	var b strings.Builder
	b.WriteString(properties(families) + ":root{")
	for _, f := range families {
		fmt.Fprintf(&b, "--form-%s:%s;", f.Name, f.Form)
	}
	b.WriteString("}\n")
	b.WriteString("mark[class^=f-]{background:none;color:inherit}\n")
	for _, f := range families {
		ink, below := "var(--c-"+f.Name+")", `:is([data-ink~="f-`+f.Name+`"],.leaves)`
		fmt.Fprintf(&b, "%s .w::highlight(f-%s){color:%s}\n", below, f.Name, ink)
		fmt.Fprintf(&b, "mark.f-%s{%s}\n", f.Name, line(f.Form, thickness[f.Form], ink, offset))
	}
	return b.String()
}

func line(style, thick, ink, below string) string {
	return fmt.Sprintf("text-decoration-line:underline;text-decoration-style:%s;text-decoration-thickness:%s;"+
		"text-decoration-color:%s;text-underline-offset:%s;text-decoration-skip-ink:none", style, thick, ink, below)
}
