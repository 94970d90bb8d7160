package colour

import (
	"fmt"
	"math"
	"os"
	"reflect"
	"sort"
	"strings"
	"testing"
)

var sequence = []string{"wasl", "lam", "madd", "ghunnah", "qalqalah", "noon", "meem", "heavy", "long-madd", "idgham", "stop", "single"}

func families(t testing.TB, names []string) []Family {
	t.Helper()
	fs, err := Families(names)
	if err != nil {
		t.Fatal(err)
	}
	return fs
}

func golden(t *testing.T, name, got string) {
	t.Helper()
	path := "testdata/" + name
	if os.Getenv("UPDATE_GOLDEN") != "" {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("%s differs; got:\n%s", name, got)
	}
}

// apart is the smallest difference of two families over both themes and all views, measured on the
// colours as they are given out.
func apart(t *testing.T, a, b Family) float64 {
	t.Helper()
	least := math.Inf(1)
	for _, p := range [][2]string{{a.Light, b.Light}, {a.Dark, b.Dark}} {
		_, d, _ := tooClose(t, p[0], p[1])
		least = math.Min(least, d)
	}
	return least
}

// The figures reported in the project's documents: if a change moves them, they have to be measured
// again.
func TestFamiliesApart(t *testing.T) {
	fs := families(t, sequence)
	neighbours, all, sameForm := math.Inf(1), math.Inf(1), math.Inf(1)
	for i := range fs {
		if fs[i].Name != sequence[i] {
			t.Errorf("family %d is %s", i, fs[i].Name)
		}
		for j := range i {
			d := apart(t, fs[i], fs[j])
			all = math.Min(all, d)
			if i-j == 1 {
				neighbours = math.Min(neighbours, d)
				if fs[i].Form == fs[j].Form {
					t.Errorf("%s and %s follow each other with the form %s", fs[j].Name, fs[i].Name, fs[i].Form)
				}
			}
			if fs[i].Form == fs[j].Form {
				sameForm = math.Min(sameForm, d)
			}
		}
	}
	near(t, "smallest difference of neighbours", neighbours, 0.1402, 0.0005)
	near(t, "smallest difference of two of one form", sameForm, 0.1092, 0.0005)
	near(t, "smallest difference of all pairs", all, 0.0182, 0.0005)
}

// Whatever is hard to tell apart by colour has two forms.
func TestHardestPairsNeverShareAForm(t *testing.T) {
	fs := families(t, sequence)
	hard := 0
	for i := range fs {
		for j := range i {
			if apart(t, fs[i], fs[j]) < closeBelow {
				hard++
				if fs[i].Form == fs[j].Form {
					t.Errorf("%s and %s", fs[i].Name, fs[j].Name)
				}
			}
		}
	}
	if hard == 0 {
		t.Error("no hard pair found: the test tests nothing")
	}
}

func TestFamiliesOnTheirPages(t *testing.T) {
	for _, f := range families(t, sequence) {
		for _, p := range []struct{ colour, page, ink string }{{f.Light, PaperLight, InkLight}, {f.Dark, PaperDark, InkDark}} {
			if c := contrast(t, p.colour, p.page); c < 4.5 {
				t.Errorf("%s %s on %s: %.2f", f.Name, p.colour, p.page, c)
			}
			if which, d, _ := tooClose(t, p.colour, p.ink); d < 0.12 {
				t.Errorf("%s %s from ink %s: %.3f in %s", f.Name, p.colour, p.ink, d, which)
			}
		}
	}
}

func TestFormsAreSharedOutEvenly(t *testing.T) {
	count := map[string]int{}
	for _, f := range families(t, sequence) {
		count[f.Form]++
	}
	for _, f := range formNames {
		if n := count[f]; n < 1 || n > 3 {
			t.Errorf("%s: %d families", f, n)
		}
	}
}

func TestFamiliesOfAnyNumber(t *testing.T) {
	for n := range most + 1 {
		fs := families(t, sequence[:n])
		if len(fs) != n {
			t.Fatalf("%d names, %d families", n, len(fs))
		}
		for i, f := range fs {
			if f.Light == "" || f.Dark == "" || f.Form == "" {
				t.Errorf("%d names: %+v", n, f)
			}
			if i > 0 && (f.Form == fs[i-1].Form || f.Light == fs[i-1].Light) {
				t.Errorf("%d names: %+v follows %+v", n, f, fs[i-1])
			}
		}
		if !reflect.DeepEqual(fs, families(t, sequence[:n])) {
			t.Errorf("%d names: differs from run to run", n)
		}
	}
	if fs, err := Families(make([]string, most+1)); err == nil || fs != nil {
		t.Errorf("%d names: %v, %v", most+1, fs, err)
	}
}

// arrange against every order there is, for up to seven hues.
func TestArrangeIsExact(t *testing.T) {
	for n := 1; n <= 7; n++ {
		d := distances(wheel(n))
		best := [2]int{-1, -1}
		score := func(order []int) [2]int {
			least, sum := 1<<40, 0
			for i := 1; i < n; i++ {
				least, sum = min(least, d[order[i-1]][order[i]]), sum+d[order[i-1]][order[i]]
			}
			return [2]int{least, sum}
		}
		order := make([]int, n)
		for i := range order {
			order[i] = i
		}
		var permute func(int)
		permute = func(k int) {
			if k == n {
				if s := score(order); s[0] > best[0] || s[0] == best[0] && s[1] > best[1] {
					best = s
				}
			}
			for i := k; i < n; i++ {
				order[k], order[i] = order[i], order[k]
				permute(k + 1)
				order[k], order[i] = order[i], order[k]
			}
		}
		permute(0)
		got := arrange(d)
		if s := score(got); s != best {
			t.Errorf("%d hues: %v scores %v, best %v", n, got, s, best)
		}
		sorted := append([]int(nil), got...)
		sort.Ints(sorted)
		for i, h := range sorted {
			if i != h {
				t.Errorf("%d hues: %v is not an order", n, got)
			}
		}
	}
}

func TestFamiliesTable(t *testing.T) {
	var b strings.Builder
	for _, f := range families(t, sequence) {
		fmt.Fprintf(&b, "%s\t%s\t%s\t%s\n", f.Name, f.Light, f.Dark, f.Form)
	}
	golden(t, "families.tsv", b.String())
}

func BenchmarkFamilies(b *testing.B) {
	for b.Loop() {
		families(b, sequence)
	}
}
