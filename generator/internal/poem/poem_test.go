package poem

import (
	"strings"
	"testing"
	"unicode"
)

func TestLines(t *testing.T) {
	lengths := map[string]int{Tuhfah: 61, Jazari: 107}
	seen := map[string]bool{}
	for i, l := range Lines {
		if got, ok := Find(l.ID()); !ok || got != l || seen[l.ID()] {
			t.Errorf("%s is found as %v, or is there twice", l.ID(), got)
		}
		seen[l.ID()] = true
		if l.Number < 1 || l.Number > lengths[l.Poem] || i > 0 && l.Poem == Lines[i-1].Poem && l.Number <= Lines[i-1].Number {
			t.Errorf("%s is out of order or beyond the poem", l.ID())
		}
		if n := len(strings.Fields(l.Text)); n < 6 || n > 16 {
			t.Errorf("%s has %d words", l.ID(), n)
		}
		for _, r := range l.Text {
			if r != ' ' && !unicode.Is(unicode.Arabic, r) {
				t.Errorf("%s has %q", l.ID(), r)
			}
		}
	}
	if _, ok := Find("tuhfah-0"); ok {
		t.Error("a line that is not there is found")
	}
}
