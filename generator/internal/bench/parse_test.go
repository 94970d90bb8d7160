package bench

import (
	"fmt"
	"math"
	"strings"
	"testing"
)

const printed = `goos: linux
pkg: sutur/generator/internal/e2e
BenchmarkRank-2    	      20	       119.2 ms-first	         6.100 ms-median	       248.4 ms-worst
BenchmarkRank/usual  	     100	   4780000 ns/op
BenchmarkRank/usual  	     200	   4790000 ns/op	       0 B/op	       0 allocs/op
BenchmarkBroken-2 	      20	       nothing ms
BenchmarkOdd-2 	      20	       12
BenchmarkSaid some words here
--- FAIL: BenchmarkHour
PASS
`

func TestParse(t *testing.T) {
	got := Parse(printed)
	if len(got) != 2 {
		t.Errorf("%d benchmarks in %v, want Rank and Rank/usual", len(got), got)
	}
	rank := got["Rank"]
	if len(rank) != 1 || rank[0].N != 20 || rank[0].Metrics["ms-median"] != 6.1 || rank[0].Metrics["ms-worst"] != 248.4 {
		t.Errorf("Rank is %v", rank)
	}
	usual := got["Rank/usual"]
	if len(usual) != 2 || usual[1].N != 200 || usual[1].Metrics["ns/op"] != 4790000 || usual[1].Metrics["allocs/op"] != 0 {
		t.Errorf("Rank/usual is %v", usual)
	}
}

func FuzzParse(f *testing.F) {
	f.Add(printed)
	f.Add("BenchmarkX-2 1 1 a 1 a")
	f.Add("Benchmark 1")
	f.Fuzz(func(t *testing.T, out string) {
		for name, list := range Parse(out) {
			for _, r := range list {
				if !strings.Contains(out, name) || len(r.Metrics) > len(strings.Fields(out))/2 {
					t.Fatalf("%q gave %q %v", out, name, r)
				}
			}
		}
		// What Go prints is read back.
		if n := len(out); n > 0 {
			line := fmt.Sprintf("BenchmarkX-8\t%d\t%d.5 ns/op\n", n, n)
			if got := Parse(line)["X"]; len(got) != 1 || got[0].N != n || math.Abs(got[0].Metrics["ns/op"]-float64(n)-0.5) > 1e-9 {
				t.Fatalf("%q gave %v", line, got)
			}
		}
	})
}

func TestComplaint(t *testing.T) {
	for out, want := range map[string]string{
		"goos: linux\n--- FAIL: BenchmarkX\n    x_test.go:1: no Chromium\nFAIL\n": "    x_test.go:1: no Chromium",
		"x.go:1: syntax\n\nFAIL pkg [build failed]\n":                             "FAIL pkg [build failed]",
		"": "",
	} {
		if got := complaint(out); got != want {
			t.Errorf("%q complains %q, want %q", out, got, want)
		}
	}
}
