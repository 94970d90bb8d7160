package diag

import (
	"errors"
	"strings"
	"testing"
)

func TestString(t *testing.T) {
	for _, c := range []struct {
		d    Diagnostic
		want string
	}{
		{Diagnostic{File: "a.md", Line: 3, Col: 7, Found: "no such verse 115:1", Do: "use 1:1 to 114:6"}, "a.md:3:7: no such verse 115:1; use 1:1 to 114:6"},
		{Diagnostic{File: "a.md", Line: 3, Found: "x"}, "a.md:3: x"},
		{Diagnostic{File: "a.md", Col: 3, Found: "x"}, "a.md: x"},
		{Diagnostic{Found: "x", Do: "y"}, "x; y"},
		{Diagnostic{File: "a.md", Line: 1, Col: 1, Severity: Warning, Found: "x"}, "a.md:1:1: warning: x"},
	} {
		if got := c.d.String(); got != c.want {
			t.Errorf("got %q, want %q", got, c.want)
		}
	}
}

func TestSort(t *testing.T) {
	ds := []Diagnostic{
		{File: "b", Line: 1, Found: "4"},
		{File: "a", Line: 10, Found: "3"},
		{File: "a", Line: 2, Col: 5, Found: "2"},
		{File: "a", Line: 2, Col: 1, Found: "1"},
		{File: "b", Line: 1, Found: "5"},
	}
	Sort(ds)
	var b strings.Builder
	for _, d := range ds {
		b.WriteString(d.Found)
	}
	if b.String() != "12345" {
		t.Errorf("got order %s, want 12345", b.String())
	}
}

func TestHasError(t *testing.T) {
	w := Diagnostic{Severity: Warning}
	if HasError(nil) || HasError([]Diagnostic{w}) {
		t.Error("an error was seen where there is none")
	}
	if !HasError([]Diagnostic{w, {}}) {
		t.Error("an error was not seen")
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("disk full") }

func TestPrint(t *testing.T) {
	var b strings.Builder
	ds := []Diagnostic{{File: "a", Found: "x"}, {File: "b", Found: "y"}}
	if err := Print(&b, ds); err != nil || b.String() != "a: x\nb: y\n" {
		t.Errorf("got %q, %v", b.String(), err)
	}
	if err := Print(broken{}, ds); err == nil || !strings.Contains(err.Error(), "disk full") {
		t.Errorf("a failed write gave %v", err)
	}
}
