package lesson

import (
	"strings"
	"testing"
	"testing/fstest"
)

// What lessons say of the order is compared with the order of the list.
func TestCheckOrder(t *testing.T) {
	in := func(id, kind string, points ...Pointer) Lesson { return Lesson{ID: id, Kind: kind, Points: points} }
	list := func(points map[string]Pointer) (ls []Lesson) {
		for _, id := range []string{"a", "b", "c", "note"} {
			kind := KindLesson
			if id == "note" {
				kind = KindPage
			}
			l := in(id, kind)
			if p, ok := points[id]; ok {
				l.Points = []Pointer{p}
			}
			ls = append(ls, l)
		}
		return ls
	}
	for _, c := range []struct{ from, to, where, want string }{
		{"a", "b", "next", ""}, {"a", "c", "later", ""}, {"b", "a", "earlier", ""}, {"c", "a", "first", ""}, {"note", "a", "first", ""},
		{"a", "c", "next", "lessons/a.md:3:4: c is not next: it is lesson 3, this is 1"},
		{"b", "a", "later", "a is not later: it is lesson 1, this is 2"},
		{"b", "b", "later", "b is not later"},
		{"a", "b", "earlier", "b is not earlier"},
		{"note", "b", "first", "lessons/note.md:3:4: b is not first"},
		{"note", "b", "later", "b is no lesson of the order, seen from here; the order is that of the lessons with rules"},
		{"c", "note", "next", "note is no lesson of the order"},
	} {
		t.Run(c.from+" "+c.to+" "+c.where, func(t *testing.T) {
			ds := CheckOrder(list(map[string]Pointer{c.from: {c.to, c.where, 3, 4}}))
			switch {
			case c.want == "" && len(ds) > 0:
				t.Errorf("found %v", ds)
			case c.want != "" && (len(ds) != 1 || !strings.Contains(ds[0].String(), c.want)):
				t.Errorf("found %v, expected %q", ds, c.want)
			}
		})
	}
}

// A pointer is read with its place, and is a link like any other.
func TestPointer(t *testing.T) {
	tx, f, rs := small(t)
	md := strings.Replace(hum, "Text ", "It comes later: [[lesson:hide later]]. ", 1)
	ls, ds := Load(fstest.MapFS{"hum.md": {Data: []byte(md)}, "hide.md": {Data: []byte(hide)}, "terms.json": {Data: []byte(terms)}}, tx, f, rs)
	for _, d := range ds {
		t.Error(d)
	}
	if want := (Pointer{"hide", "later", 6, 19}); len(ls) != 2 || len(ls[1].Points) != 1 || ls[1].Points[0] != want {
		t.Fatalf("lessons %+v, expected %v", ls, want)
	}
	if want := `<p>It comes later: <a href="hide.html">Hidden noon</a>.`; !strings.Contains(whole(ls[1]), want) {
		t.Errorf("no %s in %s", want, whole(ls[1]))
	}
}
