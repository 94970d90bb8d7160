package lesson

import (
	"fmt"
	"html"
	"slices"
	"strings"
)

// entry is one line of the glossary. An entry without a meaning leads from another name to the
// entry see.
type entry struct{ name, arabic, translit, meaning, href, see string }

// glossary writes every term and every rule in the order of the alphabet, each once with its
// meaning under its English name, and once more under its Arabic name in Latin letters, which leads
// there.
func (c *course) glossary() string {
	list := c.entries()
	for _, e := range slices.Clone(list) {
		if e.other() {
			list = append(list, entry{name: capital(strings.TrimPrefix(e.translit, "al-")), see: e.name})
		}
	}
	slices.SortStableFunc(list, func(a, b entry) int { return strings.Compare(anchor(a.name), anchor(b.name)) })
	var b strings.Builder
	b.WriteString("<dl class=\"glossary\">\n")
	for _, e := range list {
		e.write(&b)
	}
	b.WriteString("</dl>\n")
	return b.String()
}

func (c *course) entries() (list []entry) {
	for _, t := range c.terms {
		list = append(list, entry{name: t.Name, arabic: t.Arabic, translit: t.Translit, meaning: t.Meaning})
	}
	for _, r := range c.list {
		e := entry{name: r.Name, arabic: r.Arabic, translit: r.Translit, meaning: r.Meaning}
		for _, l := range c.lessons {
			if slices.Contains(l.Rules, r.ID) {
				e.href = l.ID + ".html"
			}
		}
		list = append(list, e)
	}
	return list
}

// other reports whether the entry has a second name to be found by.
func (e entry) other() bool { return e.translit != "" && !strings.EqualFold(e.translit, e.name) }

func (e entry) write(b *strings.Builder) {
	name := html.EscapeString(e.name)
	if e.see != "" {
		fmt.Fprintf(b, "<div class=\"see\"><dt>%s</dt>\n<dd>See <a href=\"#%s\">%s</a>.</dd></div>\n", name, anchor(e.see), html.EscapeString(e.see))
		return
	}
	if e.href != "" {
		name = `<a href="` + e.href + `">` + name + `</a>`
	}
	fmt.Fprintf(b, `<div id="%s"><dt>%s`, anchor(e.name), name)
	if e.arabic != "" {
		fmt.Fprintf(b, ` <bdi lang="ar" dir="rtl" class="term">%s</bdi>`, html.EscapeString(e.arabic))
	}
	if e.other() {
		fmt.Fprintf(b, ` <span class="translit">%s</span>`, html.EscapeString(e.translit))
	}
	fmt.Fprintf(b, "</dt>\n<dd>%s</dd></div>\n", html.EscapeString(e.meaning))
}

// anchor makes an id of an English name; it also sorts, and leaves marks such as the apostrophe of
// ayn out of account.
func anchor(name string) string {
	return "t-" + strings.Join(strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return (r < 'a' || r > 'z') && (r < '0' || r > '9') }), "-")
}

// capital begins with a capital letter; an ayn before it is left out.
func capital(s string) string {
	s = strings.TrimPrefix(s, "'")
	return strings.ToUpper(s[:1]) + s[1:]
}
