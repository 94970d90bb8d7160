package lesson

import (
	"fmt"
	"html"
	"slices"
	"strings"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// figure opens the figure of a worked example, up to its note: the words as the text has them, one
// element a word, and the letters to colour as "word.letter:rule", all counted from 0, joined by
// commas. Without a script the whole word is marked, never a part of it.
func (c *course) figure(p place, at spot, evs []recite.Event, large bool) string {
	var b strings.Builder
	class := "verse"
	if large {
		class += " large"
	}
	fmt.Fprintf(&b, `<figure class="%s" data-ref="%d:%d" data-rule="%s"%s>`, class, p.surah, p.ayah, p.rule, c.marks(evs))
	b.WriteString("\n" + `<p lang="ar" dir="rtl" class="ayah">`)
	c.writeWords(&b, at, evs)
	b.WriteString("</p>\n<figcaption>")
	b.WriteString(`<span class="ref">` + html.EscapeString(c.refName(p, at)))
	if p.note >= 0 {
		b.WriteString(":")
	}
	b.WriteString(`</span> `)
	return b.String()
}

// inline writes words within a sentence.
func (c *course) inline(p place, at spot, evs []recite.Event) string {
	var b strings.Builder
	fmt.Fprintf(&b, `<span lang="ar" dir="rtl" class="words" data-ref="%d:%d"%s>`, p.surah, p.ayah, c.marks(evs))
	c.writeWords(&b, at, evs)
	b.WriteString(`</span>`)
	return b.String()
}

func (c *course) marks(evs []recite.Event) string {
	if len(evs) == 0 {
		return ""
	}
	var list []string
	for _, e := range evs {
		list = append(list, fmt.Sprintf("%d.%d:%s", e.Word, e.Letter, e.Rule))
	}
	return ` data-marks="` + strings.Join(list, ",") + `"`
}

func (c *course) writeWords(b *strings.Builder, at spot, evs []recite.Event) {
	v := &c.text.Verses[at.verse]
	lined := false
	for w := at.first; w <= at.last; w++ {
		if lined && !v.Words[w].Lined {
			b.WriteString(`</span>`)
		}
		if w > at.first {
			b.WriteByte(' ')
		}
		if !lined && v.Words[w].Lined {
			b.WriteString(LinedGroup)
		}
		lined = v.Words[w].Lined
		i := slices.IndexFunc(evs, func(e recite.Event) bool { return int(e.Word) == w })
		if i >= 0 {
			b.WriteString(`<mark class="f-` + c.rules[evs[i].Rule.String()].Family + `">`)
		}
		fmt.Fprintf(b, `<span class="w%s" data-w="%d">%s</span>`, LinedClass(v, w, at.last), w, v.Text[v.Words[w].Start:v.Words[w].End])
		if i >= 0 {
			b.WriteString(`</mark>`)
		}
	}
	if lined {
		b.WriteString(`</span>`)
	}
}

// LinedGroup begins the element around the words of a run that bears the line of a prostration: a
// screen reader names it once.
const LinedGroup = `<span role="group" aria-label="under the line of a prostration">`

// LinedClass gives the classes by which the style sheet draws the line over word w of v: it goes on
// to the next word where that bears it too and is shown (last is the last word shown), and leaves
// out the sign that stands after the word.
func LinedClass(v *mushaf.Verse, w, last int) string {
	switch {
	case !v.Words[w].Lined:
		return ""
	case w < last && v.Words[w+1].Lined:
		return " lined on"
	case v.Words[w].Sajdah:
		return " lined signed"
	}
	return " lined"
}

// refName writes a reference for people: "An-Naba 78:14, word 1".
func (c *course) refName(p place, at spot) string {
	s := fmt.Sprintf("%s %d:%d", c.text.Surahs[p.surah-1].Latin, p.surah, p.ayah)
	switch n := len(c.text.Verses[at.verse].Words); {
	case at.first == 0 && at.last == n-1:
	case at.first == at.last:
		s += fmt.Sprintf(", word %d", at.first+1)
	default:
		s += fmt.Sprintf(", words %d–%d", at.first+1, at.last+1)
	}
	if at.join {
		s += ", read on"
	}
	return s
}
