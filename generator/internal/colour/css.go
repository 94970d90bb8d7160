package colour

import (
	"fmt"
	"strings"
)

// Underlines clear the bowls of noon and ya and most vowels below them and are
// never broken around ink: a line broken there vanishes under final letters.
// Offsets are from the baseline. Each form has the thickness at which it can
// still be told from the others under one alif (a fifth of an em wide): dots
// need to be fat and dashes thin, else the one reads as the other or as solid.
const (
	offset       = ".42em"
	doubleLine   = ".04em"
	doubleFirst  = ".4em"
	doubleSecond = ".52em"
)

var thickness = map[string]string{"solid": ".05em", "dotted": ".06em", "dashed": ".03em", "wavy": ".05em"}

// CSS writes the style sheet of the families:
//
//   - --paper, --ink and a --c-NAME for each family on :root, for the light
//     theme and, on screens alone, for the dark one (asked for by the system or
//     by data-theme=dark); print is always light;
//   - .w::highlight(f-NAME), colour and underline, for ranges of letters in
//     words, below an element whose data-ink holds f-NAME, and on leaves of
//     paper: every such rule that reaches an element makes its style dear;
//   - .w::highlight(f-NAME-2) for families whose form is double: the second line.
//     Ranges of these families go into both highlights. Engines draw the two
//     lines of "double" one device pixel apart, which nobody can see;
//   - mark.f-NAME, underline alone, for whole words where ranges cannot be set.
func CSS(families []Family) string {
	var b strings.Builder
	light := properties(families, PaperLight, InkLight, func(f Family) string { return f.Light })
	dark := properties(families, PaperDark, InkDark, func(f Family) string { return f.Dark })
	fmt.Fprintf(&b, ":root{%s}\n", light)
	fmt.Fprintf(&b, "@media screen and (prefers-color-scheme:dark){:root:not([data-theme=light]){%s}}\n", dark)
	fmt.Fprintf(&b, "@media screen{:root[data-theme=dark]{%s}}\n", dark)
	b.WriteString("mark[class^=f-]{background:none;color:inherit}\n")
	for _, f := range families {
		ink, below := "var(--c-"+f.Name+")", `:is([data-ink~="f-`+f.Name+`"],.leaves)`
		if f.Form == "double" {
			fmt.Fprintf(&b, "%s .w::highlight(f-%s){color:%s;%s}\n", below, f.Name, ink, line("solid", doubleLine, ink, doubleFirst))
			fmt.Fprintf(&b, "%s .w::highlight(f-%s-2){%s}\n", below, f.Name, line("solid", doubleLine, ink, doubleSecond))
			fmt.Fprintf(&b, "mark.f-%s{border-block-end:.16em double %s}\n", f.Name, ink)
			continue
		}
		under := line(f.Form, thickness[f.Form], ink, offset)
		fmt.Fprintf(&b, "%s .w::highlight(f-%s){color:%s;%s}\n", below, f.Name, ink, under)
		fmt.Fprintf(&b, "mark.f-%s{%s}\n", f.Name, under)
	}
	return b.String()
}

func properties(families []Family, paper, ink string, of func(Family) string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "--paper:%s;--ink:%s", paper, ink)
	for _, f := range families {
		fmt.Fprintf(&b, ";--c-%s:%s", f.Name, of(f))
	}
	return b.String()
}

func line(style, thick, ink, below string) string {
	return fmt.Sprintf("text-decoration:underline %s %s %s;text-underline-offset:%s;text-decoration-skip-ink:none",
		style, thick, ink, below)
}
